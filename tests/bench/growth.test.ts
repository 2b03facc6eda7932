import { expect, test } from 'vitest';
import { fitExponent } from '../../bench/growth.ts';

test.each([
  [0, 'no growth'],
  [1, 'linear growth'],
  [2, 'quadratic growth'],
])('an exponent of %d is found for %s', (exponent) => {
  const points = [100, 1000, 10000].map((n) => [n, 3 * n ** exponent] as const);
  expect(fitExponent(points)).toBeCloseTo(exponent, 12);
});

test('the fit lies between points that disagree', () => {
  const points = [
    [1, 1],
    [10, 10],
    [100, 1000],
  ] as const;
  expect(fitExponent(points)).toBeCloseTo(1.5, 12);
});
