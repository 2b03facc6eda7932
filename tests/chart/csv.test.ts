import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  axisHead,
  formatCSV,
  formatNumber,
  plainNumber,
  tableCSV,
  writeCell,
} from '../../src/chart/csv.ts';

describe('a cell', () => {
  test.each([
    ['=1+1', "'=1+1"],
    ['+49 123', "'+49 123"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['-cmd', "'-cmd"],
    ['\t=1', "'\t=1"],
    ['-0.25', '-0.25'],
    ['+3', "'+3"],
    ['1e-5', '1e-5'],
    ['a, b', '"a, b"'],
    ['5" pipe', '"5"" pipe"'],
  ])('%s is written %s', (text, cell) => {
    expect(writeCell(text)).toBe(cell);
  });

  test('a number is written as programs read it', () => {
    expect(plainNumber('−1\u202f234.5')).toBe('-1234.5');
    expect(plainNumber('≈ 1 27/32')).toBe('≈ 1 27/32');
  });
});

test('what an independent reader finds is what was written', () => {
  // Not what a spreadsheet would work as a formula: those get an apostrophe, above.
  const cell = fc.string().filter((text) => !/^\s*[=+\-@\t\r]/.test(text) && !text.includes('\r'));
  fc.assert(
    fc.property(
      fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1 }),
      (rows) => {
        expect(csvParseRows(formatCSV(rows).replaceAll('\r\n', '\n').replace(/\n$/, ''))).toEqual(
          rows,
        );
      },
    ),
  );
});

test('a table has its head first', () => {
  const columns = [
    { title: 'Gear', numeric: false },
    { title: 'Speed, mph', numeric: true },
  ];
  expect(tableCSV({ title: 'Gears', columns, rows: [['1st', '1\u202f038']] })).toBe(
    'Gear,"Speed, mph"\r\n1st,1038\r\n',
  );
});

test('the head of an axis has its unit, and a gap is an empty cell', () => {
  expect(axisHead({ label: 'Speed', unit: 'rpm' })).toBe('Speed (rpm)');
  expect(axisHead({ label: 'Ratio', unit: '' })).toBe('Ratio');
  expect([2.5, -1e-7, Number.NaN].map(formatNumber)).toEqual(['2.5', '-1e-7', '']);
});
