import type { Expression } from './tree.ts';

/** How tightly an expression holds together, for writing brackets only where they are needed. */
export function bindingOf(tree: Expression): number {
  switch (tree.type) {
    case 'otherwise':
    case 'if':
      return 0;
    case 'unary':
      return tree.operator === 'not' ? 3 : 7;
    case 'binary':
      return BINARY[tree.operator] ?? 0;
    default:
      return 9;
  }
}

const BINARY: Readonly<Record<string, number>> = {
  or: 1,
  and: 2,
  '<': 4,
  '<=': 4,
  '>': 4,
  '>=': 4,
  '=': 4,
  '<>': 4,
  '+': 5,
  '-': 5,
  '*': 6,
  '/': 6,
  '^': 8,
};

/** The least binding that the left and the right operand need to stand without brackets. */
export function operandBindings(tree: Expression): readonly [left: number, right: number] {
  const own = bindingOf(tree);
  if (tree.type !== 'binary') return [own, own];
  // The base of a power must be a single thing, its exponent may carry a sign.
  if (tree.operator === '^') return [9, 7];
  if (own === 4) return [5, 5];
  return [own, own + 1];
}
