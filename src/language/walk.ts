import type { Expression } from './tree.ts';

/** The direct parts of an expression, left to right. */
export function partsOf(tree: Expression): readonly Expression[] {
  switch (tree.type) {
    case 'quantity':
    case 'text':
    case 'truth':
    case 'name':
      return [];
    case 'field':
      return [tree.owner];
    case 'list':
      return tree.items;
    case 'unary':
      return [tree.operand];
    case 'binary':
      return [tree.left, tree.right];
    case 'if':
      return [tree.condition, tree.then, tree.else];
    case 'otherwise':
      return [tree.name, tree.fallback];
    case 'call':
      return tree.arguments.map((argument) => argument.value);
    default:
      return tree satisfies never;
  }
}

/** The functions that an expression calls, each once, in the order of reading. */
export function callsIn(tree: Expression): readonly string[] {
  const own = tree.type === 'call' ? [tree.name] : [];
  return [...new Set([...own, ...partsOf(tree).flatMap(callsIn)])];
}

/** The names that an expression needs, each once, in the order of reading. */
export function namesIn(tree: Expression): readonly string[] {
  const found = new Set<string>();
  const visit = (node: Expression): void => {
    if (node.type === 'name' && node.name !== 'pi') found.add(node.name);
    for (const part of partsOf(node)) visit(part);
  };
  visit(tree);
  return [...found];
}
