import { expect, test } from 'vitest';
import { chartRows, nameColumns } from '../../src/chart/chart-table.ts';
import { CHARTS, chart } from '../support/chart-cases.ts';

test('a table has units in its head and evenly spread rows', () => {
  const { header, rows } = chartRows(chart({}), 6);
  expect(header).toEqual(['Time, s', 'Height, mm']);
  expect(rows.map(({ cells }) => cells)).toEqual([
    ['0', '0'],
    ['2', '2'],
    ['4', '4'],
    ['6', '6'],
    ['8', '8'],
    ['10', '10'],
  ]);
});

test('the present point has a row of its own, in its place', () => {
  const series = [{ label: 'Height', points: chart({}).series[0]!.points, now: 4.5 }];
  const { rows } = chartRows(chart({ series, now: 4.5 }), 3);
  expect(rows.map(({ cells, present }) => [cells[0], present])).toEqual([
    ['0', false],
    ['4.5', true],
    ['5', false],
    ['10', false],
  ]);
});

test('a present point on an even row marks that row', () => {
  expect(chartRows(chart({ now: 5 }), 3).rows.map(({ present }) => present)).toEqual([
    false,
    true,
    false,
  ]);
});

test('a gap says that there is no value', () => {
  expect(chartRows(CHARTS[7]![1], 2).rows[0]?.cells).toEqual(['0', 'no value']);
});

test('a line without a name takes that of the axis', () => {
  const series = [{ label: '', points: [], now: undefined }];
  expect(nameColumns(chart({ series }))).toEqual(['Height, mm']);
});
