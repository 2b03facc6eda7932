import { describe, expect, test } from 'vitest';
import { coverage, normalBelow, studentT } from '../../../src/sheet/spread/student-t.ts';

/** JCGM 100 (GUM), table G.2, second-hand; printed to two decimals or, above 100, to one. */
const TABLE_G2 = [
  [0.6827, 1, 1.84],
  [0.9, 20, 1.72],
  [0.95, 1, 12.71],
  [0.95, 2, 4.3],
  [0.95, 5, 2.57],
  [0.95, 10, 2.23],
  [0.95, 20, 2.09],
  [0.99, 11, 3.11],
  [0.9545, 5, 2.65],
  [0.9973, 2, 19.21],
  [0.9973, 5, 5.51],
  [0.9973, 10, 3.96],
] as const;

test.each(TABLE_G2)('a confidence of %f with %i degrees of freedom needs t = %f', (p, dof, t) => {
  expect(Math.abs(studentT(p, dof) - t)).toBeLessThanOrEqual(0.0051);
});

test('a single degree of freedom at 99.73 % needs t = 235.8', () => {
  expect(studentT(0.9973, 1)).toBeCloseTo(235.8, 1);
});

test('endless degrees of freedom give the normal distribution: 1.959964, 2.575829', () => {
  expect(studentT(0.95, Number.POSITIVE_INFINITY)).toBeCloseTo(1.959963984540054, 9);
  expect(studentT(0.99, Number.POSITIVE_INFINITY)).toBeCloseTo(2.5758293035489, 9);
});

describe('closed forms', () => {
  test('one degree of freedom is the Cauchy distribution', () => {
    for (const t of [0.1, 1, 5, 100]) {
      expect(coverage(t, 1)).toBeCloseTo((2 / Math.PI) * Math.atan(t), 12);
    }
  });

  test('two degrees of freedom cover t / √(2 + t²)', () => {
    for (const t of [0.1, 1, 5, 100])
      expect(coverage(t, 2)).toBeCloseTo(t / Math.sqrt(2 + t * t), 12);
  });
});

test('the normal distribution is symmetric and one half in the middle', () => {
  expect(normalBelow(0)).toBe(0.5);
  for (const z of [0.3, 1, 2, 3, 6]) expect(normalBelow(z) + normalBelow(-z)).toBeCloseTo(1, 14);
});

test('a hundred degrees of freedom and a million lie near the normal distribution', () => {
  expect(studentT(0.95, 100)).toBeCloseTo(1.984, 3);
  expect(studentT(0.95, 1e7)).toBeCloseTo(1.96, 3);
});
