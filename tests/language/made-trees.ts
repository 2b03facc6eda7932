import fc from 'fast-check';
import type { Argument, Expression, NameNode } from '../../src/language/tree.ts';
import { NONE } from '../../src/units/dimension.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

const SPAN = { from: 0, to: 0 } as const;

/** Any tree that the grammar has, whether or not it makes sense. */
export function anyTree(): fc.Arbitrary<Expression> {
  const { tree } = fc.letrec<{ tree: Expression }>((tie) => ({
    tree: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      ...leaves(),
      ...branchesOf(tie('tree')),
    ),
  }));
  return tree;
}

function leaves(): readonly fc.Arbitrary<Expression>[] {
  return [anyQuantity(), anyName(), anyText(), anyTruth(), anyField()];
}

function branchesOf(part: fc.Arbitrary<Expression>): readonly fc.Arbitrary<Expression>[] {
  const operators = [
    '+',
    '-',
    '*',
    '/',
    '^',
    '<',
    '<=',
    '>',
    '>=',
    '=',
    '<>',
    'and',
    'or',
  ] as const;
  return [
    fc.record({
      ...node('binary'),
      operator: fc.constantFrom(...operators),
      left: part,
      right: part,
    }),
    fc.record({ ...node('unary'), operator: fc.constantFrom('-', 'not'), operand: part }),
    fc.tuple(part, part, part).map(([condition, ...ends]) => chooseBetween(condition, ...ends)),
    fc.record({ ...node('otherwise'), name: anyName(), fallback: part }),
    fc.record({ ...node('list'), items: fc.array(part, { maxLength: 3 }) }),
    fc.record({
      ...node('call'),
      name: fc.constantFrom('max', 'round', 'ghost'),
      arguments: fc.array(anyArgument(part), { maxLength: 3 }),
    }),
  ] as readonly fc.Arbitrary<Expression>[];
}

function chooseBetween(condition: Expression, yes: Expression, no: Expression): Expression {
  // biome-ignore lint/suspicious/noThenProperty: a branch, not a promise
  return { type: 'if', condition, then: yes, else: no, ...SPAN };
}

function node<T extends Expression['type']>(type: T) {
  return { type: fc.constant(type), from: fc.constant(0), to: fc.constant(0) };
}

function anyName(): fc.Arbitrary<NameNode> {
  return fc
    .constantFrom('gap', 'wanted_gap', 'a', 'x1', 'inner', 'measured')
    .map((name) => ({ type: 'name', name, ...SPAN }));
}

/** Digits in every spelling that a sheet keeps, with units that hold joins and powers. */
function anyQuantity(): fc.Arbitrary<Expression> {
  const digits = fc.constantFrom('3', '0.25', '.5', '3 1/8', '1e-3', '12.50', '1000', '0');
  const unit = fc.constantFrom('', 'in', 'mm/rev', 'kg/m^3', 'lbf·ft', '%', '1/mi', 'km/h');
  return fc.tuple(digits, unit).map(([written, symbol]) => makeQuantity(written, symbol));
}

/** A quantity node as the parser makes it. */
export function makeQuantity(digits: string, symbol: string): Expression {
  const unit = symbol === '' ? undefined : parseUnit(symbol)!;
  const [whole, fraction] = digits.split(' ');
  const [above, below] = (fraction ?? '0/1').split('/').map(Number);
  const value = (Number(whole) + above! / below!) * (unit?.factor ?? 1);
  return {
    type: 'quantity',
    value,
    dimension: unit?.dimension ?? NONE,
    digits,
    unit: unit?.symbol ?? '',
    ...SPAN,
  };
}

function anyText(): fc.Arbitrary<Expression> {
  return fc
    .constantFrom('', 'free text', '# no note', 'ü ± 🔧')
    .map((value) => ({ type: 'text', value, ...SPAN }));
}

function anyTruth(): fc.Arbitrary<Expression> {
  return fc.boolean().map((value) => ({ type: 'truth', value, ...SPAN }));
}

function anyField(): fc.Arbitrary<Expression> {
  return anyName().map((owner) => ({ type: 'field', owner, field: 'rate', ...SPAN }));
}

function anyArgument(part: fc.Arbitrary<Expression>): fc.Arbitrary<Argument> {
  return fc
    .tuple(fc.constantFrom(undefined, 'value', 'step'), part)
    .map(([name, value]) => (name === undefined ? { value, ...SPAN } : { name, value, ...SPAN }));
}

/** The tree without its places, which printing changes. */
export function withoutPlaces(tree: unknown): unknown {
  return JSON.parse(
    JSON.stringify(tree, (key, value) => (key === 'from' || key === 'to' ? undefined : value)),
  );
}
