import type { Expression } from '../../src/language/tree.ts';

/** A tree as nested brackets, operator first: `-2^2` is `(- (^ 2 2))`. */
export function sketchTree(tree: Expression): string {
  switch (tree.type) {
    case 'quantity':
      return [tree.digits, tree.unit]
        .filter((text) => text !== '')
        .join('_')
        .replaceAll(' ', '_');
    case 'text':
      return JSON.stringify(tree.value);
    case 'truth':
      return `${tree.value}`;
    case 'name':
      return tree.name;
    case 'field':
      return `${tree.owner.name}.${tree.field}`;
    case 'list':
      return `[${tree.items.map(sketchTree).join(' ')}]`;
    case 'unary':
      return sketch(tree.operator, tree.operand);
    case 'binary':
      return sketch(tree.operator, tree.left, tree.right);
    case 'if':
      return sketch('if', tree.condition, tree.then, tree.else);
    case 'otherwise':
      return sketch('otherwise', tree.name, tree.fallback);
    case 'call':
      return `(${[tree.name, ...tree.arguments.map(sketchArgument)].join(' ')})`;
    default:
      return tree satisfies never;
  }
}

function sketch(head: string, ...parts: readonly Expression[]): string {
  return `(${[head, ...parts.map(sketchTree)].join(' ')})`;
}

function sketchArgument({ name, value }: { readonly name?: string; readonly value: Expression }) {
  return name === undefined ? sketchTree(value) : `${name}:${sketchTree(value)}`;
}
