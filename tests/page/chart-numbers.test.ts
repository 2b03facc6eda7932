import { expect, test } from 'vitest';
import { createChartTable } from '../../src/page/chart-numbers.ts';
import { textOf } from './test-desk.ts';

const data = {
  title: 'Gap against wear',
  x: { label: 'Wear', unit: 'in', from: 0, to: 1 },
  y: { label: 'Gap', unit: 'in', from: 0, to: 2 },
  series: [
    {
      label: '',
      points: [
        [0, 2],
        [1, 0],
      ] as const,
      now: 1.5,
    },
  ],
  marks: [],
  limits: [],
  now: 0.25,
};

test('columns are named with their units', () => {
  const heads = [...createChartTable(data).querySelectorAll('thead th')].map(textOf);
  expect(heads).toEqual(['Wear, in', 'Gap, in']);
});

test('the row of the present value says so in words', () => {
  const now = createChartTable(data).querySelector('tr.present');
  expect(textOf(now)).toMatch(/^now: 0\.25/);
});
