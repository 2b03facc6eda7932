import { expect, test } from 'vitest';
import type { ChartData } from '../../src/sheet/chart-data.ts';
import { sweepChart } from '../../src/sheet/sweep.ts';
import { sweepFamily } from '../../src/sheet/sweep-family.ts';
import { block, makeSheet } from './made-book.ts';

const MADE = makeSheet(
  [
    block('given', 'axle = 3 "Axle" from 2 to 4', 'wide = 2 in "Wide"'),
    block('work', 'out = axle * wide "Out" as in to 0.1'),
    block('chart "Map"', 'out as in over axle from 2 to 4 and wide from 1 in to 5 in'),
  ].join('\n'),
);

test('a map is told by a few lines, one for each value of what runs up', () => {
  const chart = MADE.book.charts[0]!;
  const data = sweepFamily(MADE.book, MADE.frame, chart, undefined) as ChartData;
  expect(data.series.map(({ label }) => label.replaceAll('\u00a0', ' '))).toEqual([
    '1.00 in',
    '2.00 in',
    '3.00 in',
    '4.00 in',
    '5.00 in',
  ]);
  const [x, y] = data.series[2]!.points.at(-1)!;
  expect(y).toBeCloseTo(3 * x, 9);
  expect(data.y).toMatchObject({ label: 'Out', unit: 'in' });
});

test('whatever draws lines only gets them from the sweep', () => {
  const chart = MADE.book.charts[0]!;
  const data = sweepChart(MADE.book, MADE.frame, chart.statement, 'made') as ChartData;
  expect(data.series).toHaveLength(5);
});
