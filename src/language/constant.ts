import type { Expression } from './tree.ts';

/** The value of an expression that is written in plain numbers alone, such as `1/2` or `-2`. */
export function maybeConstant(tree: Expression): number | undefined {
  if (tree.type === 'quantity') return tree.unit === '' ? tree.value : undefined;
  if (tree.type === 'unary' && tree.operator === '-') {
    const operand = maybeConstant(tree.operand);
    return operand === undefined ? undefined : -operand;
  }
  if (tree.type !== 'binary' || tree.operator !== '/') return undefined;
  const left = maybeConstant(tree.left);
  const right = maybeConstant(tree.right);
  return left === undefined || right === undefined || right === 0 ? undefined : left / right;
}
