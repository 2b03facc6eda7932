import { expect, test } from 'vitest';
import { mapRows } from '../../src/chart/map-table.ts';
import { makeMap } from './made-map.ts';

test('the first axis runs across, the second down from its top', () => {
  expect(mapRows(makeMap(), 3)).toEqual({
    title: 'Speed, rpm, over Axle',
    header: ['Tyre, in', '0', '2', '4'],
    rows: [
      ['2', '20', '22', '24'],
      ['1', '10', '12', '14'],
      ['0', '0', '2', '4'],
    ],
  });
});

test('where there is no value the cell says so', () => {
  expect(mapRows(makeMap({ values: new Array(15).fill(Number.NaN) }), 2).rows[0]).toEqual([
    '2',
    'no value',
    'no value',
  ]);
});
