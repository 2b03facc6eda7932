import { expect, test } from 'vitest';
import type { ChartData } from '../../../src/sheet/chart-data.ts';
import { listLines, overlayCharts } from '../../../src/sheet/compare/overlay-charts.ts';
import { sweepChart } from '../../../src/sheet/sweep.ts';
import { block, makeSheet } from '../made-book.ts';

const SHEET = [
  block(
    'given',
    'axle = 3 "Axle" from 2 to 5',
    'speed = 10 "Speed" from 0 to 20',
    'limit = 50 "Limit"',
    'ratios = [2, 1]',
  ),
  block('work', 'top = axle * speed', 'each = top * ratios', 'gear = ordinals(ratios)'),
  block('chart "Top"', 'top over speed from 0 to 20', 'mark limit "Limit" on y'),
  block('chart "Each"', 'each over speed from 0 to 20 a line for each gear'),
  block('chart "Over axle"', 'top over axle from 2 to 5', 'mark axle "Fitted" on x'),
  block('chart "Bare"', 'top over axle from 2 to 5'),
].join('\n');

function layer(name: string, title: string, entries: Record<string, string> = {}) {
  const { book, frame } = makeSheet(SHEET, entries);
  const { statement } = book.charts.find((chart) => chart.statement.title === title)!;
  return { name, data: sweepChart(book, frame, statement, 'made') as ChartData };
}

function overlay(title: string, entries: Record<string, string>, line?: string): ChartData {
  return overlayCharts([layer('As it is', title), layer('Short', title, entries)], line);
}

test('each layer has a line of its own, named by it, and a point at the present place', () => {
  const { series, now, y } = overlay('Top', { axle: '4' });
  expect(series.map(({ label, now: height }) => [label, height])).toEqual([
    ['As it is', 30],
    ['Short', 40],
  ]);
  expect(now).toBe(10);
  expect(y).toMatchObject({ from: 0, to: 80 });
});

test('a mark that is the same everywhere stands once, one that is not with its names', () => {
  expect(overlay('Top', { axle: '4' }).marks).toEqual([{ axis: 'y', value: 50, label: 'Limit' }]);
  expect(overlay('Top', { limit: '60' }).marks.map(({ label }) => label)).toEqual([
    'Limit, As it is',
    'Limit, Short',
  ]);
});

test('of a chart with several lines one is compared, the last unless another is chosen', () => {
  const last = overlay('Each', { axle: '4' });
  expect(last.series.map(({ now }) => now)).toEqual([30, 40]);
  expect(last.y.label).toMatch(/, 2nd$/);
  expect(overlay('Each', { axle: '4' }, '1st').series.map(({ now }) => now)).toEqual([60, 80]);
  expect(listLines([layer('As it is', 'Each')])).toEqual(['1st', '2nd']);
});

test('a layer without the line that is compared is left out of it', () => {
  const { series } = overlay('Each', { ratios: '[3, 2, 1]' }, '3rd');
  expect(series).toHaveLength(1);
});

test('lines that fall on one another are one line', () => {
  const { series } = overlay('Over axle', { axle: '4' });
  expect(series.map(({ label }) => label)).toEqual(['']);
});

test('layers that stand at different places are marked there, once each', () => {
  const { marks, now, series } = overlay('Over axle', { axle: '4' });
  expect(now).toBeUndefined();
  expect(series[0]!.now).toBeUndefined();
  expect(marks.map(({ value, label }) => [value, label])).toEqual([
    [3, 'Fitted, As it is'],
    [4, 'Fitted, Short'],
  ]);
  expect(overlay('Bare', { axle: '4' }).marks.map(({ value, label }) => [value, label])).toEqual([
    [3, 'As it is'],
    [4, 'Short'],
  ]);
});

test('what has no value anywhere leaves an axis all the same', () => {
  const empty = layer('As it is', 'Top', { axle: '' });
  expect(overlayCharts([empty]).y).toMatchObject({ from: 0, to: 1 });
});
