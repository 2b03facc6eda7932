import fc from 'fast-check';
import { expect, test } from 'vitest';
import { calloutsHeight, placeCallouts } from '../../src/drawing/callouts.ts';

const HEIGHT = 17;

function callouts(...xs: readonly (readonly [x: number, width: number])[]) {
  return xs.map(([x, width]) => ({ x, width, height: HEIGHT }));
}

test('labels with room stand centred in one row', () => {
  expect(placeCallouts(callouts([100, 40], [200, 40]), 0, 300)).toEqual([
    { left: 80, rise: 0, anchor: 'middle' },
    { left: 180, rise: 0, anchor: 'middle' },
  ]);
});

test('a label at the edge is pushed inside', () => {
  expect(placeCallouts(callouts([0, 40]), 0, 300)[0]?.left).toBe(0);
  expect(placeCallouts(callouts([300, 40]), 0, 300)[0]?.left).toBe(260);
});

test('crowded labels fly as flags, the left ones above the right ones', () => {
  const placed = placeCallouts(callouts([50, 80], [60, 80], [70, 80]), 0, 300);
  expect(placed.map(({ rise }) => rise)).toEqual([2 * HEIGHT, HEIGHT, 0]);
  expect(placed.map(({ left }) => left)).toEqual([50, 60, 70]);
});

test('a label at the right edge does not make the next one stand on a pole', () => {
  const [left, right] = placeCallouts(callouts([292, 88], [331, 72]), 0, 358);
  expect(left).toMatchObject({ left: 204, rise: 0, anchor: 'end' });
  expect(right).toMatchObject({ left: 259, rise: HEIGHT, anchor: 'end' });
});

test('no pole runs through a label where an order of placing them can help it', () => {
  const line = callouts([57, 88], [100, 98], [196, 79], [292, 92], [331, 75]);
  const placed = placeCallouts(line, 0, 358).map((place, i) => ({ ...place, ...line[i]! }));
  for (const above of placed)
    for (const below of placed.filter(({ rise }) => rise < above.rise)) {
      const isBeside = above.x <= below.left || above.x >= below.left + below.width;
      expect(isBeside, `${above.x} through ${below.x}`).toBe(true);
    }
});

test('labels over one point share its pole', () => {
  const placed = placeCallouts(callouts([50, 80], [50, 80]), 0, 300);
  expect(new Set(placed.map(({ rise }) => rise))).toEqual(new Set([0, HEIGHT]));
});

test('a row is as high as its highest label', () => {
  const mixed = [
    { x: 50, width: 80, height: 17 },
    { x: 60, width: 80, height: 34 },
  ];
  const placed = placeCallouts(mixed, 0, 300);
  expect(placed[0]?.rise).toBe(34);
  expect(calloutsHeight(mixed, placed)).toBe(51);
});

test('no labels take no height', () => {
  expect(calloutsHeight([], placeCallouts([], 0, 300))).toBe(0);
});

test('no two labels ever touch and none leaves the drawing', () => {
  const any = fc.array(
    fc.record({
      x: fc.integer({ min: 0, max: 300 }),
      width: fc.integer({ min: 10, max: 300 }),
      height: fc.constantFrom(17, 34),
    }),
    { maxLength: 12 },
  );
  fc.assert(
    fc.property(any, (labels) => {
      const boxes = placeCallouts(labels, 0, 300).map(({ left, rise }, i) => ({
        left,
        rise,
        ...labels[i]!,
      }));
      for (const box of boxes) {
        expect(box.left).toBeGreaterThanOrEqual(0);
        expect(box.left + box.width).toBeLessThanOrEqual(300);
      }
      const touching = boxes.flatMap((a, i) =>
        boxes
          .slice(i + 1)
          .filter(
            (b) =>
              a.left < b.left + b.width &&
              b.left < a.left + a.width &&
              a.rise < b.rise + b.height &&
              b.rise < a.rise + a.height,
          ),
      );
      expect(touching).toEqual([]);
    }),
  );
});
