import { describe, expect, test } from 'vitest';
import { createTunnelScene, roundingOf } from '../../../src/drawing/kinds/tunnel-opening-scene.ts';
import { createData, type Slots } from '../../support/drawing-data.ts';

const HOLE: Slots = { hole_front: 0.1, hole_rear: 0.2, hole_width: 0.06 };
const scene = (slots: Slots) => createTunnelScene(createData('Opening', slots));

test('the round ends have half the width for radius, and their centres stand that far in', () => {
  const { hole, centres, assumed } = scene(HOLE);
  expect(roundingOf(hole)).toBeCloseTo(0.03, 12);
  expect(centres[0]).toBeCloseTo(0.13, 12);
  expect(centres[1]).toBeCloseTo(0.17, 12);
  expect(assumed).toEqual([]);
});

test('the least hole lies about the middle of the opening', () => {
  const { least } = scene({ ...HOLE, hole_aside: 0.01, least_length: 0.08, least_width: 0.04 });
  expect(least!.front).toBeCloseTo(0.11, 12);
  expect(least!.left).toBeCloseTo(-0.01, 12);
});

test('a bezel of which one edge is not known is left out', () => {
  expect(scene({ ...HOLE, bezel_front: 0, bezel_width: 0.1 }).bezel).toBeUndefined();
  expect(scene({ ...HOLE, bezel_front: 0, bezel_rear: 0.3, bezel_width: 0.1 }).bezel).toBeDefined();
});

test.each([undefined, Number.NaN, Number.POSITIVE_INFINITY, 0, -1, 1e300])(
  'a width of %d is taken as usual, and said so',
  (hole_width) => {
    expect(scene({ ...HOLE, hole_width }).assumed).toEqual(['hole_width']);
  },
);

describe('a lever in the opening', () => {
  const lever = (back: number, right: number) =>
    scene({
      ...HOLE,
      gears: ['1st'],
      lever_back: [back],
      lever_right: [right],
      lever_length: [0.01],
      lever_width: [0.01],
    }).levers[0]!;

  test.each([
    ['in the middle', 0.15, 0, false],
    ['just clear of a side', 0.15, 0.0199, false],
    ['into a side', 0.15, 0.0201, true],
    ['just clear of an end', 0.1101, 0, false],
    ['into an end', 0.1099, 0, true],
    // The corner of a square hole would have room for it; the round end has none.
    ['into the round of a corner', 0.115, 0.015, true],
  ] as const)('%s', (_, back, right, touches) => {
    expect(lever(back, right).touches).toBe(touches);
  });

  test('of which a size is missing is left out', () => {
    expect(scene({ ...HOLE, gears: ['1st'], lever_back: [0.15] }).levers).toEqual([]);
  });
});

describe('the datum', () => {
  test('is drawn where it is, near by', () => {
    expect(scene({ hole_front: 0.05, hole_rear: 0.15, hole_width: 0.06 })).toMatchObject({
      datum: 0,
      isFar: false,
    });
  });

  test.each([
    [1, 1.1],
    [-1.1, -1],
  ])('is pointed at on its side when far from %d to %d', (hole_front, hole_rear) => {
    const { datum, isFar, extent } = scene({ hole_front, hole_rear, hole_width: 0.06 });
    expect(isFar).toBe(true);
    expect(Math.sign(datum - hole_front)).toBe(-Math.sign(hole_front));
    expect(extent.rear - extent.front).toBeLessThan(0.2);
  });
});
