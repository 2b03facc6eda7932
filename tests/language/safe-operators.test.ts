import { expect, test } from 'vitest';
import { divide, raise } from '../../src/language/safe-operators.ts';

test.each([
  [6, 3, 2],
  [0, 3, 0],
  [6, 0, Number.NaN],
  [0, 0, Number.NaN],
  [6, -0, Number.NaN],
  [6, Number.POSITIVE_INFINITY, Number.NaN],
  [6, Number.NaN, Number.NaN],
])('%d divided by %d is %d', (a, b, quotient) => {
  expect(divide(a, b)).toBe(quotient);
});

test.each([
  [2, 3, 8],
  [-2, 2, 4],
  [2, -1, 0.5],
  [0, 0, 1],
  [0, -1, Number.NaN],
  [-1, 0.5, Number.NaN],
  [1e200, 2, Number.NaN],
  [Number.NaN, 0, Number.NaN],
  [Number.POSITIVE_INFINITY, -1, Number.NaN],
])('%d to the power %d is %d', (base, exponent, power) => {
  expect(raise(base, exponent)).toBe(power);
});
