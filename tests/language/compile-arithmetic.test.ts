import { describe, expect, test } from 'vitest';
import { type Code, numberCode } from '../../src/language/code.ts';
import { compileArithmetic, compileNegation } from '../../src/language/compile-arithmetic.ts';
import { createMemory } from '../../src/language/memory.ts';
import type { ArithmeticOperator } from '../../src/language/tree.ts';
import { makeFormula } from './made-formula.ts';

function run(operator: ArithmeticOperator, a: number, b: number): unknown {
  const code: Code = compileArithmetic(
    operator,
    numberCode(() => a),
    numberCode(() => b),
  );
  return code.run(createMemory(0));
}

describe('operators on numbers', () => {
  test.each([
    ['+', 2, 3, 5],
    ['-', 2, 3, -1],
    ['*', 2, 3, 6],
    ['/', 3, 2, 1.5],
    ['^', 2, 3, 8],
    ['^', 0, 0, 1],
    ['/', 0, 5, 0],
  ] as const)('%s of %d and %d is %d', (operator, a, b, value) => {
    expect(run(operator, a, b)).toBe(value);
  });

  test.each([
    ['/', 1, 0],
    ['/', 0, 0],
    ['/', 1, Number.POSITIVE_INFINITY],
    ['^', -8, 1 / 3],
    ['^', 0, -1],
    ['^', 10, 400],
    ['^', Number.NaN, 0],
    ['^', Number.POSITIVE_INFINITY, -1],
  ] as const)('%s of %d and %d has no value', (operator, a, b) => {
    expect(run(operator, a, b)).toBeNaN();
  });
});

describe('operators on lists', () => {
  test.each([
    ['a - 1', [0, 1, 2]],
    ['1 - a', [0, -1, -2]],
    ['a - a', [0, 0, 0]],
    ['a / a', [1, 1, 1]],
    ['2^a', [2, 4, 8]],
    ['a * few', undefined],
    ['a / (a - a)', undefined],
  ])('%s', (source, value) => {
    const made = makeFormula(source, { a: '[1, 2, 3]', few: '[1, 2]' });
    expect(made.value).toEqual(value && Float64Array.from(value));
  });
});

test('a minus in front of a number and of a list', () => {
  const negated = compileNegation(numberCode(() => 3));
  expect(negated.run(createMemory(0))).toBe(-3);
  expect(makeFormula('-a', { a: '[1, -2]' }).value).toEqual(Float64Array.of(-1, 2));
});

test('a list is not changed by what is worked from it', () => {
  const { value } = makeFormula('if sum(-a) < 0 then a else a', { a: '[1, 2]' });
  expect(value).toEqual(Float64Array.of(1, 2));
});
