import { type Matched, matchArguments } from './arguments.ts';
import { type CompileContext, compileExpression } from './compile.ts';
import { isThere } from './compile-call.ts';
import type { Value } from './kind.ts';
import type { Memory } from './memory.ts';
import type { CallNode, Expression } from './tree.ts';
import { partsOf } from './walk.ts';

/**
 * Why the result of a formula lies outside of what its functions are good for: one sentence for
 * each function that says so of its present values. Empty where all is well. What is not worked
 * now, such as the branch that is not taken, has nothing to say.
 */
export function listOutside(
  tree: Expression,
  context: CompileContext,
  memory: Memory,
): readonly string[] {
  const inner = workedParts(tree, context, memory).flatMap((part) =>
    listOutside(part, context, memory),
  );
  const own = tree.type === 'call' ? outsideOf(tree, context, memory) : undefined;
  return own === undefined ? inner : [...inner, own];
}

function workedParts(
  tree: Expression,
  context: CompileContext,
  memory: Memory,
): readonly Expression[] {
  const answerOf = (part: Expression) => compileExpression(part, context).run(memory);
  if (tree.type === 'if') {
    const { condition } = tree;
    return [condition, answerOf(condition) === 1 ? tree.then : tree.else];
  }
  if (tree.type === 'otherwise') {
    const isBlank = memory.blanks[context.slotOf(tree.name.name)] === 1;
    return [isBlank ? tree.fallback : tree.name];
  }
  if (tree.type === 'binary' && (tree.operator === 'and' || tree.operator === 'or')) {
    const settled = answerOf(tree.left) === (tree.operator === 'or' ? 1 : 0);
    return settled ? [tree.left] : partsOf(tree);
  }
  return partsOf(tree);
}

function outsideOf(node: CallNode, context: CompileContext, memory: Memory): string | undefined {
  const declaration = context.functions.get(node.name)!;
  if (declaration.outside === undefined) return undefined;
  const matched = matchArguments(declaration, node) as readonly Matched[];
  const values = matched.map(({ parameter, value }) =>
    value === undefined ? parameter.fallback! : compileExpression(value, context).run(memory),
  );
  return values.every(isThere) ? declaration.outside(...(values as Value[])) : undefined;
}
