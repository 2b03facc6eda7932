import { expect, test } from 'vitest';
import { findSheet, type SheetFile } from '../../src/cli/find-sheet.ts';
import { type Loaded, loadBook } from '../../src/cli/load-book.ts';
import { SHEETS } from './made-sheets.ts';
import { makeTerminal } from './made-terminal.ts';

function load(named: string, files: Readonly<Record<string, string>> = SHEETS): Loaded {
  const terminal = makeTerminal(files);
  return loadBook(terminal, findSheet(terminal, named) as SheetFile);
}

function names({ book }: Loaded): readonly string[] {
  return book.sheets.map(({ name }) => name);
}

test('a sheet that carries nothing is alone', () => {
  expect(names(load('10-shaft'))).toEqual(['10-shaft']);
});

test('sheets come with those that they carry from, however far', () => {
  expect(names(load('30-car'))).toEqual(['30-car', '20-wheel', '10-shaft']);
  expect(load('30-car').book.problems).toEqual([]);
});

test('other sheets are looked for beside the first', () => {
  const files = { 'mine/20-wheel.md': SHEETS['notebooks/20-wheel.md'], ...SHEETS };
  expect(names(load('mine/20-wheel', files))).toEqual(['20-wheel']);
  expect(load('mine/20-wheel', files).book.problems[0]).toMatchObject({ code: 'unknown-sheet' });
});

test('a sheet that is missing is a problem with the place where it is named', () => {
  expect(load('orphan').book.problems).toMatchObject([
    { code: 'unknown-sheet', place: { file: 'notebooks/orphan.md', line: 3 } },
  ]);
});

test('two sheets that carry from one another are each read once', () => {
  const files = {
    'a.md': '# A\n\n```from b\ny\n```\n\n```work\nx = y\n```\n',
    'b.md': '# B\n\n```from a\nx\n```\n\n```work\ny = x\n```\n',
  };
  expect(names(load('a', files))).toEqual(['a', 'b']);
  expect(load('a', files).book.problems[0]).toMatchObject({ code: 'loop' });
});
