import { csvParseRows } from 'd3-dsv';
import { expect, test } from 'vitest';
import { chartCSV } from '../../src/chart/chart-csv.ts';
import { axis, CHARTS, chart } from '../support/chart-cases.ts';

type Points = readonly (readonly [number, number])[];

function csv(...lines: readonly Points[]): string {
  const series = lines.map((points, i) => ({ label: 'ab'[i]!, points, now: undefined }));
  return chartCSV(chart({ series }));
}

test('a head with units, a row a point, lines ended as RFC 4180 asks', () => {
  expect(
    csv([
      [0, 1],
      [1, 2],
    ]),
  ).toBe('Time (s),a (mm)\r\n0,1\r\n1,2\r\n');
});

test('numbers come in full precision', () => {
  const value = 0.1 + 0.2;
  expect(Number(csvParseRows(csv([[0, value]]))[1]![1])).toBe(value);
});

test('a gap is an empty cell', () => {
  expect(
    csv([
      [0, Number.NaN],
      [1, 2],
    ]),
  ).toContain('\r\n0,\r\n');
});

test('lines with different samples share their rows', () => {
  expect(
    csv(
      [
        [0, 1],
        [2, 3],
      ],
      [
        [1, 5],
        [2, 6],
      ],
    ),
  ).toBe('Time (s),a (mm),b (mm)\r\n0,1,\r\n1,,5\r\n2,3,6\r\n');
});

test('a jump is two rows', () => {
  expect(
    csv([
      [0, 1],
      [1, 9],
      [1, 2],
    ]),
  ).toContain('1,9\r\n1,2\r\n');
});

test.each(['=1+1', '+1', '-1+2', '@SUM(A1)', '\tx', ' =1'])(
  'the name %j is made harmless',
  (label) => {
    const text = chartCSV(chart({ x: axis(label, '', 0, 1) }));
    expect(csvParseRows(text)[0]![0]).toBe(`'${label}`);
  },
);

test('commas, quotes and line ends in names are quoted', () => {
  const label = 'a "b", c\nd';
  expect(csvParseRows(chartCSV(chart({ x: axis(label, '', 0, 1) })))[0]![0]).toBe(label);
});

test.each(CHARTS)('%s: every row has as many cells as the head', (_, data) => {
  const rows = csvParseRows(chartCSV(data));
  expect(new Set(rows.map((row) => row.length))).toEqual(new Set([data.series.length + 1]));
});
