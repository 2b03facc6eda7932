import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { INTERPOLATE } from '../../../src/language/functions/interpolate.ts';
import { refusalOf, runFunction } from '../../support/run-function.ts';

const list = (...numbers: readonly number[]) => Float64Array.from(numbers);
const read = (xs: readonly number[], ys: readonly number[], at: number) =>
  runFunction(INTERPOLATE, list(...xs), list(...ys), at) as number;

test.each([
  ['at a point', [0, 10, 20], [5, 7, 1], 10, 7],
  ['at its first point', [0, 10, 20], [5, 7, 1], 0, 5],
  ['at its last point', [0, 10, 20], [5, 7, 1], 20, 1],
  ['between two', [0, 10, 20], [5, 7, 1], 15, 4],
  ['of one point, at that point', [3], [8], 3, 8],
  ['of places below nothing', [-2, -1], [4, 8], -1.5, 6],
])('a curve is read %s', (_, xs, ys, at, y) => {
  expect(read(xs, ys, at)).toBe(y);
});

test('a curve is read at each place of a list', () => {
  const found = runFunction(INTERPOLATE, list(0, 10), list(0, 100), list(0, 2.5, 10));
  expect(found).toEqual(list(0, 25, 100));
});

describe('what has no value', () => {
  const beyond = 'this lies beyond the ends of the curve, where nothing is known of it';
  const rising = 'the places of the curve must rise from one to the next';
  test.each([
    ['below the first point', [0, 10], [0, 1], -1e-9, beyond],
    ['above the last point', [0, 10], [0, 1], 10.1, beyond],
    ['at no place', [0, 10], [0, 1], Number.NaN, beyond],
    ['on a curve without points', [], [], 0, 'the curve has no points'],
    ['on unequal lists', [0, 1], [0], 0, 'the curve has 2 places and 1 values'],
    ['on a curve that goes back', [0, 2, 1], [0, 1, 2], 1, rising],
    ['on a curve with a jump', [0, 1, 1], [0, 1, 2], 1, rising],
  ])('%s', (_, xs, ys, at, sentence) => {
    expect(refusalOf(INTERPOLATE, list(...xs), list(...ys), at)).toBe(sentence);
  });

  test('a list of places has none where one of them has none', () => {
    expect(refusalOf(INTERPOLATE, list(0, 1), list(0, 1), list(0.5, 2))).toBe(beyond);
  });
});

test('any curve along one straight line gives that line back', () => {
  const xs = fc.uniqueArray(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 20 });
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(xs, share, fc.integer(), fc.integer({ min: -99, max: 99 }), (places, s, a, b) => {
      const rising = places.toSorted((x, y) => x - y);
      const at = rising[0]! + s * (rising.at(-1)! - rising[0]!);
      const line = (x: number) => a + b * x;
      const wanted = line(at);
      const found = read(rising, rising.map(line), at);
      expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(a) + 1e5));
    }),
  );
});
