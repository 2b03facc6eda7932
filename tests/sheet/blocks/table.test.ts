import { csvFormatRows } from 'd3-dsv';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { faultsOf, readBlock } from './made-block.ts';

test('columns with their units, rows as text, each with its line', () => {
  const { table, problems } = readBlock(
    'table',
    'bolts "Bolts" source "the shelf"',
    'bolt,length (in), grip ( mm ),sizes',
    'Short,1 3/4,3,"[1, 2]"',
    '',
    'Long, 2.0 , 4,[3]',
  );
  expect(problems).toEqual([]);
  expect(table).toMatchObject({ name: 'bolts', label: 'Bolts', source: 'the shelf' });
  expect(table!.columns.map(({ name, unit }) => [name, unit?.symbol])).toEqual([
    ['bolt', undefined],
    ['length', 'in'],
    ['grip', 'mm'],
    ['sizes', undefined],
  ]);
  expect(table!.rows).toEqual([
    ['Short', '1 3/4', '3', '[1, 2]'],
    ['Long', '2.0', '4', '[3]'],
  ]);
  expect(table!.lines).toEqual([3, 5]);
});

test('a header alone is a table without rows', () => {
  expect(readBlock('table', 'bolts', 'bolt,length (in)').table).toMatchObject({ rows: [] });
});

test('cells hold commas, quotation marks and line ends as RFC 4180 writes them', () => {
  const found = readBlock('table', 'notes', 'name,note', 'A,"one, ""two""', 'three"', 'B,four');
  expect(found.table).toMatchObject({
    rows: [
      ['A', 'one, "two"\nthree'],
      ['B', 'four'],
    ],
    lines: [3, 5],
  });
});

test('any cells that a library writes are read back', () => {
  // Cells are trimmed, so those made here have no blanks at their ends.
  const cell = fc.stringMatching(/^[a-z0-9",;\n#]{1,8}$/).map((text) => text.trim() || 'x');
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 5 }), (rows) => {
      const lines = csvFormatRows([['a', 'b'], ...rows]).split('\n');
      expect(readBlock('table', 'made', ...lines).table?.rows).toEqual(rows);
    }),
  );
});

test('rows of another length are told one by one, and the rest stands', () => {
  const found = readBlock('table', 'bolts', 'bolt,length (in)', 'A', 'B,2', 'C,3,4');
  expect(faultsOf(found)).toEqual(['ragged-row 3:1', 'ragged-row 5:1']);
  expect(found.table).toMatchObject({ rows: [['B', '2']], lines: [4] });
});

test.each([
  ['no name', '"Bolts"', ['bolt'], 'unexpected-word 1:10'],
  ['no header', 'bolts', [], 'missing-line 1:10'],
  ['a header with capitals', 'bolts', ['bolt,Length'], 'bad-header 2:6'],
  ['a header that is empty', 'bolts', ['bolt,'], 'bad-header 2:1'],
  ['a header with a bracket open', 'bolts', ['bolt,length (in'], 'bad-header 2:6'],
  ['a header in no unit', 'bolts', ['bolt,length (furlong)'], 'unknown-unit 2:6'],
  ['a header without its unit', 'bolts', ['bolt,length ()'], 'unknown-unit 2:6'],
  ['a header twice', 'bolts', ['a,b (in),b (mm)'], 'repeated-clause 2:10'],
  ['a cell that is never closed', 'bolts', ['bolt', '"A', 'B'], 'unclosed-cell 3:1'],
])('%s leaves no table', (_, info, lines, fault) => {
  const found = readBlock('table', info, ...lines);
  expect(faultsOf(found)).toEqual([fault]);
  expect(found.table).toBeUndefined();
});
