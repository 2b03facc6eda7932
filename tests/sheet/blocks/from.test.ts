import { expect, test } from 'vitest';
import { faultsOf, readBlock } from './made-block.ts';

test('values of another sheet, with a name and a label of their own here or not', () => {
  const { sheet, sheetPlace, statements, problems } = readBlock(
    'from',
    '70-release-bearing',
    'gap',
    'wanted_gap as target "Gap wanted" source "the sheet before"',
    'shims as packers',
  );
  expect(problems).toEqual([]);
  expect(sheet).toBe('70-release-bearing');
  expect(sheetPlace).toEqual({ file: 'made.md', line: 1, column: 9 });
  expect(
    statements.map(({ origin, name, label, labelled }) => [origin, name, label, labelled]),
  ).toEqual([
    ['gap', 'gap', 'Gap', false],
    ['wanted_gap', 'target', 'Gap wanted', true],
    ['shims', 'packers', 'Packers', false],
  ]);
  expect(statements[1]!.source).toBe('the sheet before');
});

test('a block that names no sheet is told so, and keeps its lines', () => {
  const found = readBlock('from', '', 'gap');
  expect(faultsOf(found)).toEqual(['missing-name 1:8']);
  expect(found.statements).toHaveLength(1);
});

test.each([
  ['gap as', 'unexpected-end 2:7'],
  ['gap as mm', 'reserved-name 2:8'],
  ['gap = 3', 'unknown-clause 2:5'],
  ['3 in', 'unexpected-word 2:1'],
  ['Gap', 'misspelt-name 2:1'],
])('%s is refused: %s', (line, fault) => {
  expect(faultsOf(readBlock('from', 'other', line))).toEqual([fault]);
});
