import { describe, expect, test } from 'vitest';
import { nameKind } from '../../src/language/kind.ts';
import type { GivenCell } from '../../src/sheet/cell.ts';
import { block, makeSheet } from './made-book.ts';

const TABLE = block(
  'table bolts "Bolts"',
  'bolt,length (in),ratio,sizes (mm)',
  'Short,1,2,"[1, 2]"',
  'Long,2,3,[3]',
);

function link(line: string) {
  const { book, cell } = makeSheet(TABLE + block('given', line));
  return { cell: cell('x') as GivenCell, problems: book.problems };
}

describe('kind and unit come from the value that the sheet holds', () => {
  test.each([
    ['x = 3 in', 'length', 'in'],
    ['x = 3 in as mm', 'length', 'mm'],
    ['x = 3', 'plain number', undefined],
    ['x = 50 %', 'plain number', '%'],
    ['x = 50 as %', 'plain number', '%'],
    ['x = 1; 2; 3 mm', 'length', 'mm'],
    ['x = [1, 2] thou', 'list of length', 'thou'],
    ['x = 2 in * 3', 'length', 'in'],
    ['x = 2 in * 3 in', 'area', 'mm^2'],
    ['x = 3 in / 2 in', 'plain number', undefined],
    ['x = blank', 'plain number', undefined],
    ['x = blank rpm', 'turning speed', 'rpm'],
    ['x = blank list', 'list of plain number', undefined],
    ['x = blank mm list', 'list of length', 'mm'],
    ['x = "free"', 'text', undefined],
    ['x = pick "Long" from bolts', 'table row', undefined],
    ['x = pick "Long" from bolts.length', 'length', 'in'],
    ['x = pick "Long" from bolts.length as mm', 'length', 'mm'],
    ['x = pick "Long" from bolts.ratio', 'plain number', undefined],
    ['x = pick "Long" from bolts.sizes', 'list of length', 'mm'],
    ['x = pick "Long" from bolts.bolt', 'text', undefined],
  ])('%s: %s in %s', (line, kind, unit) => {
    const { cell, problems } = link(line);
    expect(problems).toEqual([]);
    expect([nameKind(cell.kind!), cell.display.unit?.symbol]).toEqual([kind, unit]);
  });
});

test('a range is kept in SI, whatever its units', () => {
  const { cell } = link('x = 3 in from 1/2 in to 50.8 mm');
  expect(cell.range).toEqual({ from: expect.closeTo(0.0127, 12), to: expect.closeTo(0.0508, 12) });
});

test('a given that is picked knows its table', () => {
  const { cell } = link('x = pick "Long" from bolts.length');
  expect(cell.table).toBe(0);
  expect(link('x = 3').cell).not.toHaveProperty('table');
});

describe('what cannot be', () => {
  test.each([
    ['x = 3 in as rpm', 'wrong-display'],
    ['x = "free" as mm', 'wrong-display'],
    ['x = pick "Long" from bolts as mm', 'wrong-display'],
    ['x = 3 in from 1 s to 2 s', 'wrong-dimension'],
    ['x = 3 in from 1 to 2', 'wrong-dimension'],
    ['x = [1, 2] from 1 to 2', 'wrong-dimension'],
    ['x = "free" from 1 to 2', 'wrong-dimension'],
    ['x = 3 from 2 to 1', 'range-order'],
    ['x = 3 from 2 to 2', 'range-order'],
    ['x = 3 from 1 to y', 'unknown-name'],
    ['x = 3 from 1 to 1 / 0', 'division-by-zero'],
    ['x = 3 ± 1 in', undefined],
    ['x = 3 mm ± 1 s', 'bad-tolerance'],
    ['x = 3 mm ± -1 mm', 'bad-tolerance'],
    ['x = gap', 'name-in-entry'],
    ['x = 1,234', 'ambiguous-number'],
    ['x = pick "Medium" from bolts', 'unknown-row'],
    ['x = pick "Long" from blots', 'unknown-name'],
    ['x = pick "Long" from x', 'loop'],
    ['x = pick "Long" from bolts.width', 'unknown-field'],
  ])('%s: %s', (line, code) => {
    const { cell, problems } = link(line);
    expect(problems.map((problem) => problem.code)).toEqual(code === undefined ? [] : [code]);
    expect(cell.problem?.code).toBe(code);
    expect(cell.kind === undefined).toBe(code !== undefined);
  });
});

test('two rows may go by one name where nothing is picked', () => {
  const table = block('table bolts', 'bolt,length (in)', 'Short,1', 'Long,2', 'Short,3');
  expect(makeSheet(table).book.problems).toEqual([]);
});
