import { expect, test } from 'vitest';
import { someNumber } from '../../src/trade/some-number.ts';

const negative = (number: number) => number < 0;

test('a quantity is looked at alone', () => {
  expect(someNumber(-2, negative)).toBe(-2);
  expect(someNumber(2, negative)).toBeUndefined();
});

test('of a list the first that fits is given', () => {
  expect(someNumber(Float64Array.of(1, -3, -5), negative)).toBe(-3);
  expect(someNumber(Float64Array.of(1, 3), negative)).toBeUndefined();
});

test('an empty list has none', () => {
  expect(someNumber(new Float64Array(), negative)).toBeUndefined();
});
