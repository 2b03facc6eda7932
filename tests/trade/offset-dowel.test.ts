import { expect, test } from 'vitest';
import { NEAREST_DOWEL } from '../../src/trade/offset-dowel.ts';

const { work, outside } = NEAREST_DOWEL;
if (work.type !== 'whole') throw new Error('works on whole values');
const STOCK = Float64Array.from([14, 7, 21]);
const nearest = (offset: number, sizes: Float64Array = STOCK) => work.run(offset, sizes);

test.each([
  ['nothing', 0, 0],
  ['half a step', 3.5, 0],
  ['a hair more', 3.6, 7],
  ['6.1', 6.1, 7],
  ['10.5, as near to two', 10.5, 7],
  ['18', 18, 21],
  ['beyond the largest', 60, 21],
])('for %s', (_, offset, size) => {
  expect(nearest(offset)).toBe(size);
});

test('with none in stock a plain dowel is left', () => {
  expect(nearest(9, new Float64Array())).toBe(0);
  expect(outside?.(9, new Float64Array())).toBeUndefined();
});

test('an offset well beyond the largest dowel is told', () => {
  expect(outside?.(24, STOCK)).toBeUndefined();
  expect(outside?.(25, STOCK)).toContain('beyond the largest dowel');
});

test('a dowel offset by nothing is refused', () => {
  expect(work.refuse(3, Float64Array.from([0, 7]))).toContain('more than 0');
});
