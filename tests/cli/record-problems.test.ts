import { expect, test } from 'vitest';
import { recordProblems } from '../../src/cli/record-problems.ts';
import { linkBook } from '../../src/sheet/book.ts';
import { createFrame } from '../../src/sheet/create-frame.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { solve } from '../../src/sheet/solve.ts';

const F = '```';

function problems(...sheets: readonly (readonly [string, string])[]): readonly string[] {
  const book = linkBook(sheets.map(([name, text]) => readSheet(text, `${name}.md`)));
  const frame = createFrame(book);
  solve(book, frame);
  const records = recordProblems(book, frame, sheets[0]![0], []);
  return records.map(({ code, cell }) => `${cell}: ${code}`);
}

test('a sound sheet has none', () => {
  expect(problems(['a', `${F}work\nx = 1\n${F}\n`])).toEqual([]);
});

test('what waits for a blank reading is no problem, however far it is', () => {
  const text = `${F}given\nx = blank mm\n${F}\n${F}work\ny = x * 2\nz = y * 2\n${F}\n`;
  expect(problems(['a', text])).toEqual([]);
});

test('what waits for something that failed is one', () => {
  const text = `${F}work\nx = 1 / 0\ny = x * 2\nz = y * 2\n${F}\n`;
  expect(problems(['a', text])).toEqual(['x: division-by-zero', 'y: waiting', 'z: waiting']);
});

test('a loop is told once, and what waits for it as well', () => {
  const text = `${F}work\nx = y + 1\ny = x + 1\nz = y * 2\n${F}\n`;
  expect(problems(['a', text])).toEqual(['x: loop', 'z: waiting']);
});

test('what failed on another sheet counts where this sheet leans on it, and only there', () => {
  const a = `${F}from b\ny\n${F}\n`;
  const b = `${F}work\nx = 1 / 0\ny = x * 2\nother = 2 / 0\n${F}\n`;
  expect(problems(['a', a], ['b', b])).toEqual([
    'y: waiting',
    'b/x: division-by-zero',
    'b/y: waiting',
  ]);
});
