import { describe, expect, test } from 'vitest';
import { BUILTINS, createFunctions } from '../../src/language/functions/builtins.ts';
import { nameKind } from '../../src/language/kind.ts';
import { readTableRows } from '../../src/sheet/table-rows.ts';
import { readBlock } from './blocks/made-block.ts';

const FUNCTIONS = createFunctions(BUILTINS);

function read(...lines: readonly string[]) {
  const { table } = readBlock('table', 'made', ...lines);
  return readTableRows(table!, FUNCTIONS, 'made.md');
}

/** Kind and values of the second column of a table of these cells. */
function column(header: string, ...cells: readonly string[]) {
  const { columns, rows, problems } = read(`key,${header}`, ...cells.map((cell) => `k,${cell}`));
  const name = header.replace(/ .*/, '');
  return {
    kind: nameKind(columns.get(name)!),
    values: rows.map((row) => row.cells.get(name)),
    faults: problems.map(({ place, message }) => `${place!.line}: ${message}`),
  };
}

describe('what a column holds', () => {
  test.each([
    ['x', ['1', '2.5'], 'plain number', [1, 2.5]],
    ['x', ['1 1/2', '-1/4'], 'plain number', [1.5, -0.25]],
    ['x', ['50 %'], 'plain number', [0.5]],
    ['x', ['1 m', '2 m'], 'length', [1, 2]],
    ['x (m)', ['1', '2 * 3'], 'length', [1, 6]],
    ['x (m)', ['500 mm', '2'], 'length', [0.5, 2]],
    ['x (%)', ['50', '25 %'], 'plain number', [0.5, 0.25]],
    ['x', ['free', 'tight'], 'text', ['free', 'tight']],
    ['x', ['1', 'about 2'], 'text', ['1', 'about 2']],
    ['x', ['1', ''], 'text', ['1', '']],
    ['x', ['"""1"""'], 'text', ['"1"']],
    ['x', ['"[1, 2]"', '[3]'], 'list of plain number', [Float64Array.of(1, 2), Float64Array.of(3)]],
    [
      'x (m)',
      ['"[1, 2]"', '[500 mm]'],
      'list of length',
      [Float64Array.of(1, 2), Float64Array.of(0.5)],
    ],
    ['x', [], 'plain number', []],
    ['x (mm)', [], 'length', []],
  ])('%s of %j: %s', (header, cells, kind, values) => {
    const found = column(header, ...cells);
    expect(found).toEqual({ kind, values, faults: [] });
  });
});

describe('a cell that does not fit is told at its line, and has no value', () => {
  test.each([
    ['x (m)', ['1', 'long'], ['4: "long" in column x: no value is called long']],
    ['x (m)', ['1', '2 s'], ['4: "2 s" in column x: it is time, the column is in m']],
    ['x (m)', ['1', '"""2"""'], ['4: ""2"" in column x: a number in m belongs here']],
    ['x', ['1', '2 m'], ['4: "2 m" in column x: it is of another kind than the cells above']],
    ['x', ['1', '[2]'], ['4: "[2]" in column x: it is of another kind than the cells above']],
    [
      'x (m)',
      ['1', '1/0'],
      ['4: "1/0" in column x: division by zero: the divisor is written as 0'],
    ],
  ])('%s of %j', (header, cells, faults) => {
    const found = column(header, ...cells);
    expect(found.faults).toEqual(faults);
    expect(found.values).toEqual([1, Number.NaN]);
  });

  test('in a column of lists an empty list stands in its place', () => {
    expect(column('x', '[1]', '2').values).toEqual([Float64Array.of(1), new Float64Array()]);
  });
});

test('a row is known by its first cell, as it is written', () => {
  const { rows, columns } = read('size (in),note', '1/4,thin', '3/8,thick');
  expect(rows.map(({ key }) => key)).toEqual(['1/4', '3/8']);
  expect([...columns.keys()]).toEqual(['size', 'note']);
});
