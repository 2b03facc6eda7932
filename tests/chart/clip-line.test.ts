import { expect, test } from 'vitest';
import { clipLine, joinStretches, listStretches } from '../../src/chart/clip-line.ts';

const X = [0, 10] as const;
const Y = [0, 10] as const;

test('a line inside stays as it is', () => {
  expect(
    clipLine(
      [
        [1, 1],
        [5, 5],
        [9, 1],
      ],
      X,
      Y,
    ),
  ).toEqual([
    [
      [1, 1],
      [5, 5],
      [9, 1],
    ],
  ]);
});

test('a line that leaves is cut exactly at the edge', () => {
  expect(
    clipLine(
      [
        [0, 0],
        [10, 20],
      ],
      X,
      Y,
    ),
  ).toEqual([
    [
      [0, 0],
      [5, 10],
    ],
  ]);
});

test('a line that leaves and comes back is two stretches', () => {
  expect(
    clipLine(
      [
        [0, 0],
        [4, 20],
        [8, 0],
      ],
      X,
      Y,
    ),
  ).toEqual([
    [
      [0, 0],
      [2, 10],
    ],
    [
      [6, 10],
      [8, 0],
    ],
  ]);
});

test('a line that crosses the frame with no sample in it is drawn', () => {
  expect(
    clipLine(
      [
        [-10, 5],
        [20, 5],
      ],
      X,
      Y,
    ),
  ).toEqual([
    [
      [0, 5],
      [10, 5],
    ],
  ]);
});

test('a line outside is not there', () => {
  expect(
    clipLine(
      [
        [0, 11],
        [10, 12],
      ],
      X,
      Y,
    ),
  ).toEqual([]);
});

test('a gap breaks a line; so does infinity', () => {
  expect(
    listStretches([
      [0, 1],
      [1, Number.NaN],
      [2, 3],
      [3, Number.POSITIVE_INFINITY],
    ]),
  ).toEqual([[[0, 1]], [[2, 3]]]);
});

test('a jump stays a jump', () => {
  const jump = [
    [0, 1],
    [5, 9],
    [5, 2],
    [10, 4],
  ] as const;
  expect(clipLine(jump, X, Y)).toEqual([jump]);
});

test('a single point inside stays, outside it goes', () => {
  expect(clipLine([[5, 5]], X, Y)).toEqual([[[5, 5]]]);
  expect(clipLine([[5, 50]], X, Y)).toEqual([]);
});

test('no points are no stretches', () => {
  expect(clipLine([], X, Y)).toEqual([]);
});

test('stretches are joined with gaps between them', () => {
  expect(joinStretches([[[0, 1]], [[2, 3]]])).toEqual([
    [0, 1],
    [Number.NaN, Number.NaN],
    [2, 3],
  ]);
});
