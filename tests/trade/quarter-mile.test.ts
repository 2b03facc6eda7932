import { describe, expect, test } from 'vitest';
import { QUARTER_MILE_RULE } from '../../src/trade/quarter-mile.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const POUND = 0.45359237;
const HORSEPOWER = 745.6998715822702;
const rule = (pounds: number, horsepower: number) =>
  runFunction(QUARTER_MILE_RULE, pounds * POUND, horsepower * HORSEPOWER) as unknown;

test('eight times the mass for the power takes twice as long', () => {
  const run = QUARTER_MILE_RULE.work.run as (...numbers: number[]) => number;
  const [light, heavy] = [1000, 8000].map((pounds) => run(pounds * POUND, 100 * HORSEPOWER));
  expect(heavy! / light!).toBeCloseTo(2, 12);
  expect(rule(2700, 100)).toBeCloseTo(18.6018, 9);
});

test('without power there is no time', () => {
  expect(refusalOf(QUARTER_MILE_RULE, 1000, 0)).toBe('without power there is no time');
});

describe('beyond the cars that it was fitted to', () => {
  const warned = (mass: number | Float64Array, power: number | Float64Array) =>
    QUARTER_MILE_RULE.outside!(mass, power);

  test('it says nothing of an ordinary car', () => {
    expect(warned(3200 * POUND, 123 * HORSEPOWER)).toBeUndefined();
  });

  test.each([
    ['a racing car', 1500, 400],
    ['a lorry', 40000, 400],
  ])('it warns of %s', (_, pounds, horsepower) => {
    expect(warned(pounds * POUND, horsepower * HORSEPOWER)).toMatch(/none of the 32 cars/);
  });

  test('it finds the one in a list', () => {
    const masses = Float64Array.of(3200 * POUND, 40000 * POUND);
    expect(warned(masses, 123 * HORSEPOWER)).toMatch(/none of the 32 cars/);
    expect(warned(3200 * POUND, Float64Array.of(123 * HORSEPOWER))).toBeUndefined();
  });
});
