import { expect, test } from 'vitest';
import { findLineEnd } from '../../src/chart/line-end.ts';

const RANGE = { x: [0, 10], y: [0, 10] } as const;

test.each([
  [
    'right',
    [
      [0, 1],
      [10, 5],
    ],
  ],
  [
    'right',
    [
      [0, 1],
      [9.9, 5],
    ],
  ],
  [
    'top',
    [
      [0, 1],
      [4, 10],
    ],
  ],
  [
    'inside',
    [
      [0, 1],
      [4, 5],
    ],
  ],
  [
    'inside',
    [
      [0, 1],
      [4, 0],
    ],
  ],
] as const)('a line ends at the %s: %o', (edge, points) => {
  expect(findLineEnd([points], RANGE)).toEqual({ point: points[1], edge });
});

test('the last stretch decides', () => {
  expect(findLineEnd([[[0, 1]], [[5, 5]]], RANGE)?.point).toEqual([5, 5]);
});

test('a line that is not on the chart has no end', () => {
  expect(findLineEnd([], RANGE)).toBeUndefined();
});
