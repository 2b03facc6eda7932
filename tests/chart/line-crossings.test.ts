import { expect, test } from 'vitest';
import { findCrossings, findInside, valueAt } from '../../src/chart/line-crossings.ts';
import { CHARTS, sample } from '../support/chart-cases.ts';

test('a line meets a level between its samples', () => {
  expect(
    findCrossings(
      [
        [0, 0],
        [10, 100],
      ],
      25,
    ),
  ).toEqual([2.5]);
});

test('a line that starts, touches or ends on a level meets it there, once', () => {
  expect(
    findCrossings(
      [
        [0, 5],
        [1, 6],
      ],
      5,
    ),
  ).toEqual([0]);
  expect(
    findCrossings(
      [
        [0, 0],
        [1, 5],
        [2, 0],
      ],
      5,
    ),
  ).toEqual([1]);
  expect(
    findCrossings(
      [
        [0, 0],
        [1, 5],
      ],
      5,
    ),
  ).toEqual([1]);
});

test('a stretch along the level counts once', () => {
  expect(
    findCrossings(
      [
        [0, 0],
        [1, 5],
        [2, 5],
        [3, 9],
      ],
      5,
    ),
  ).toEqual([1]);
});

test('a gap is not crossed', () => {
  expect(
    findCrossings(
      [
        [0, 0],
        [1, Number.NaN],
        [2, 9],
      ],
      5,
    ),
  ).toEqual([]);
});

test('each peak of a saw-tooth meets the redline once', () => {
  expect(findCrossings(CHARTS[1]![1].series[0]!.points, 5400)).toHaveLength(4);
});

test('the stretches inside a window are found', () => {
  const hill = sample((x) => 10 - (x - 5) ** 2, 0, 10);
  const [first, second, ...rest] = findInside(hill, 1, 9);
  expect(rest).toEqual([]);
  expect(first![0]).toBeCloseTo(2, 1);
  expect(first![1]).toBeCloseTo(4, 1);
  expect(second![0]).toBeCloseTo(6, 1);
});

test('a line inside throughout is one stretch, one outside is none', () => {
  expect(
    findInside(
      [
        [0, 5],
        [10, 6],
      ],
      1,
      9,
    ),
  ).toEqual([[0, 10]]);
  expect(
    findInside(
      [
        [0, 15],
        [10, 16],
      ],
      1,
      9,
    ),
  ).toEqual([]);
});

test('a value is read between samples, not in gaps nor beyond the ends', () => {
  const line = [
    [0, 0],
    [10, 100],
    [11, Number.NaN],
    [12, 7],
  ] as const;
  expect(valueAt(line, 2.5)).toBe(25);
  expect(valueAt(line, 10)).toBe(100);
  expect(valueAt(line, 10.5)).toBeNaN();
  expect(valueAt(line, -1)).toBeNaN();
  expect(valueAt(line, 13)).toBeNaN();
  expect(valueAt([], 1)).toBeNaN();
});

test('at a jump the value after it counts', () => {
  expect(
    valueAt(
      [
        [0, 0],
        [5, 9],
        [5, 2],
        [10, 4],
      ],
      5,
    ),
  ).toBe(2);
});
