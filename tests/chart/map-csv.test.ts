import { autoType, csvParse } from 'd3-dsv';
import { expect, test } from 'vitest';
import { mapCSV } from '../../src/chart/map-csv.ts';
import { makeMap } from './made-map.ts';

test('a map as CSV has a row for each place, with units in its head', () => {
  const rows = csvParse(mapCSV(makeMap()), autoType) as unknown as Record<string, number>[];
  expect(rows).toHaveLength(15);
  expect(rows[0]).toEqual({ Axle: 0, 'Tyre (in)': 0, 'Speed (rpm)': 0 });
  expect(rows.every((row) => row['Speed (rpm)'] === row.Axle! + 10 * row['Tyre (in)']!)).toBe(true);
});

test('where there is no result the cell is empty', () => {
  const values = makeMap().values.with(1, Number.NaN);
  expect(mapCSV(makeMap({ values })).split('\r\n')[2]).toBe('1,0,');
});
