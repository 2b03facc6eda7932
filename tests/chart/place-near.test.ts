import { expect, test } from 'vitest';
import {
  type Box,
  boxesAround,
  boxesOver,
  countLines,
  distanceTo,
  meet,
  nearestIn,
  pickBox,
} from '../../src/chart/place-near.ts';

const FRAME: Box = { left: 0, top: 0, right: 100, bottom: 100 };
const BOX: Box = { left: 40, top: 40, right: 60, bottom: 50 };

test('candidates stand around their point at a distance', () => {
  const [right, above] = boxesAround([50, 50], 20, 10, 5);
  expect(right).toEqual({ left: 55, right: 75, top: 45, bottom: 55 });
  expect(above).toEqual({ left: 40, right: 60, top: 35, bottom: 45 });
});

test('a grid of candidates stays in its frame', () => {
  const boxes = boxesOver(FRAME, 60, 60, 20);
  expect(boxes).toHaveLength(9);
  expect(Math.max(...boxes.map(({ right }) => right))).toBe(100);
});

test('a box that leaves the frame or lies on another is not free', () => {
  const outside = { left: 90, right: 110, top: 0, bottom: 10 };
  expect(pickBox([outside], { frame: FRAME, boxes: [], lines: [] })).toBeUndefined();
  expect(pickBox([BOX], { frame: FRAME, boxes: [BOX], lines: [] })).toBeUndefined();
});

test('a box without a line through it goes first, then the nearest', () => {
  const other = { ...BOX, top: 80, bottom: 90 };
  const scene = {
    frame: FRAME,
    boxes: [],
    lines: [
      [
        [0, 45],
        [100, 45],
      ],
    ] as const,
  };
  expect(pickBox([BOX, other], scene)).toBe(other);
  expect(pickBox([other, BOX], { ...scene, lines: [] }, [50, 30])).toBe(BOX);
});

test.each([
  [
    'through it',
    [
      [0, 0],
      [100, 90],
    ],
    1,
  ],
  [
    'beside it',
    [
      [0, 0],
      [100, 0],
    ],
    0,
  ],
  [
    'past a corner',
    [
      [0, 60],
      [50, 100],
    ],
    0,
  ],
  [
    'diagonally past it',
    [
      [30, 45],
      [45, 20],
    ],
    0,
  ],
  [
    'that ends in it',
    [
      [50, 45],
      [50, 200],
    ],
    1,
  ],
  ['of one point', [[50, 45]], 0],
] as const)('a line %s counts %3$i', (_, line, count) => {
  expect(countLines(BOX, [line])).toBe(count);
});

test('boxes meet where they share more than an edge', () => {
  expect(meet(BOX, { ...BOX, left: 60, right: 70 })).toBe(false);
  expect(meet(BOX, { ...BOX, left: 59, right: 70 })).toBe(true);
});

test('the nearest point of a box is on its edge', () => {
  expect(nearestIn(BOX, [0, 45])).toEqual([40, 45]);
  expect(distanceTo(BOX, [37, 36])).toBe(5);
});
