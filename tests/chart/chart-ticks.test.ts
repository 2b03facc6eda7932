import { ticks } from 'd3-array';
import { expect, test } from 'vitest';
import { createTicks, niceRange, tickStep } from '../../src/chart/chart-ticks.ts';

test.each([
  [0, 7000, 7, 1000],
  [0, 150, 8, 20],
  [0, 0.12, 6, 0.02],
  [-1, 1, 4, 0.5],
])('from %d to %d in about %d parts goes in steps of %d', (from, to, count, step) => {
  expect(tickStep(from, to, count)).toBeCloseTo(step, 12);
});

test.each([
  [0, 7000, 1000],
  [0, 0.3, 0.1],
  [-0.25, 0.2, 0.1],
  [600, 6000, 500],
])('ticks from %d to %d are the multiples that d3-array finds', (from, to, step) => {
  expect(createTicks(from, to, step)).toEqual(ticks(from, to, Math.round((to - from) / step)));
});

test('a range without a multiple has no ticks', () => {
  expect(createTicks(1.1, 1.9, 1)).toEqual([]);
});

test('a range is widened to whole steps, and left where it stands on them', () => {
  expect(niceRange(712, 6873, 1000)).toEqual([0, 7000]);
  expect(niceRange(0, 7000, 1000)).toEqual([0, 7000]);
  expect(niceRange(-0.3, 0.1, 0.2)[0]).toBeCloseTo(-0.4);
});
