import { expect, test } from 'vitest';
import { drawnRange } from '../../src/chart/chart-range.ts';
import { axis, CHARTS, chart, sample } from '../support/chart-cases.ts';

const mark = (value: number) => [{ axis: 'y' as const, value, label: '' }];

test('the range of the axes is drawn', () => {
  expect(drawnRange(chart({}))).toEqual({ x: [0, 10], y: [0, 10], cropped: false });
});

test('a mark that is near is taken in, one far off is not', () => {
  expect(drawnRange(chart({ marks: mark(12) })).y).toEqual([0, 12]);
  expect(drawnRange(chart({ marks: mark(500) })).y).toEqual([0, 10]);
});

test('a mark on the other axis does not count', () => {
  const marks = [{ axis: 'x' as const, value: 12, label: '' }];
  expect(drawnRange(chart({ marks })).y).toEqual([0, 10]);
});

test('lines that run far past every mark are cut off a little above it', () => {
  const { y, cropped } = drawnRange(CHARTS[0]![1]);
  expect(cropped).toBe(true);
  expect(y).toEqual([0, 5500 * 1.12]);
});

test('one line alone is left whole where it is not many times too high', () => {
  const data = (top: number) => {
    const series = [{ label: '', points: sample((x) => x * x * x, 0, 10), now: 1 }];
    return chart({ y: axis('', '', 0, top), series, marks: mark(250) });
  };
  expect(drawnRange(data(1000)).cropped).toBe(false);
  expect(drawnRange(data(1300)).cropped).toBe(true);
});

test('a line most of which would be cut off keeps its height', () => {
  const points = sample((x) => 4 + 40 * Math.abs(x - 5), 0, 10);
  const valley = { y: axis('', '', 4, 204), series: [{ label: '', points, now: 4.5 }] };
  expect(drawnRange(chart({ ...valley, marks: mark(5) }))).toMatchObject({
    y: [4, 204],
    cropped: false,
  });
});

test('the present value of most lines stays on the chart', () => {
  const high = chart({ marks: mark(2), series: [{ label: '', points: [], now: 9 }] });
  expect(drawnRange(high)).toMatchObject({ y: [0, 10], cropped: false });
});

test('a little of what lies outside a window is shown', () => {
  const { y } = drawnRange(chart({ limits: [{ least: 2, most: 10, label: '' }] }));
  expect(y[1]).toBeGreaterThan(10);
});

test.each([
  ['no range', Number.NaN, Number.NaN],
  ['no length', 3, 3],
  ['nought', 0, 0],
  ['no end', 0, Number.POSITIVE_INFINITY],
  ['the wrong way round', 5, 1],
])('an axis with %s still has a range', (_, from, to) => {
  const { x, y } = drawnRange(chart({ x: axis('', '', from, to), y: axis('', '', from, to) }));
  expect(x[1]).toBeGreaterThan(x[0]);
  expect(y[1]).toBeGreaterThan(y[0]);
});
