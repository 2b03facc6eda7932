import { expect, test } from 'vitest';
import { planChart } from '../../src/chart/chart-plan.ts';
import { CHARTS, chart, sample } from '../support/chart-cases.ts';

const plan = (data: Parameters<typeof planChart>[0]) => planChart(data, 700, 300);
const texts = (data: Parameters<typeof planChart>[0]) =>
  plan(data).labels.map(({ lines }) => lines.join(' '));

test('lines are named where they leave the chart, marks on their axis', () => {
  const labels = plan(CHARTS[0]![1]).labels.map(({ lines, edge }) => [lines.join(' '), edge]);
  expect(labels).toEqual([
    ['1st', 'top'],
    ['2nd', 'top'],
    ['3rd', 'top'],
    ['4th', 'top'],
    ['5th', 'right'],
    ['6th', 'right'],
    ['Redline 5500', 'right'],
    ['Cruise 70', 'top'],
  ]);
});

test('a single line is named by its axis and has no label', () => {
  const series = [{ label: 'Piston', points: sample((x) => x, 0, 10), now: 0 }];
  expect(texts(chart({ series }))).toEqual([]);
});

test('a mark off the chart is told and not drawn', () => {
  const marks = [
    { axis: 'y', value: 5000, label: 'Breaks' },
    { axis: 'x', value: -5, label: 'Before' },
  ] as const;
  const labels = plan(chart({ marks })).labels;
  expect(labels.map(({ lines }) => lines.join(' '))).toEqual([
    'Breaks 5000 (off the chart, higher)',
    'Before −5 (off the chart, further left)',
  ]);
  expect(labels.map(({ drawn }) => drawn)).toEqual([false, false]);
});

test('a mark without a value is left out', () => {
  expect(texts(chart({ marks: [{ axis: 'x', value: Number.NaN, label: 'None' }] }))).toEqual([]);
});

test('ticks stand in the range, further apart where there is less room', () => {
  const wide = planChart(chart({}), 1000, 300);
  const narrow = planChart(chart({}), 300, 300);
  expect(narrow.xTicks.length).toBeLessThan(wide.xTicks.length);
  expect(wide.xTicks.every((tick) => tick >= 0 && tick <= 10)).toBe(true);
});

test('a line that runs wholly past the chart is told', () => {
  const line = (label: string, height: number) => ({
    label,
    points: sample(() => height, 0, 10),
    now: undefined,
  });
  expect(
    texts(chart({ series: [line('In', 5), line('Over', 50), line('None', Number.NaN)] })),
  ).toEqual(['In', 'Over (off the chart, higher)']);
});
