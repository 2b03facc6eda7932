import { expect, test } from 'vitest';
import {
  complainOf,
  complainRecords,
  openSheet,
  sentenceRecord,
} from '../../src/cli/open-sheet.ts';
import { fail } from '../../src/language/problem.ts';
import { SHEETS } from './made-sheets.ts';
import { makeTerminal } from './made-terminal.ts';

test('a sheet is opened with its readings entered and worked', () => {
  const open = openSheet(
    { command: 'find', sheet: '10-shaft' },
    [{ name: 'ratio', entry: '2' }],
    makeTerminal(SHEETS),
  );
  if (typeof open === 'number') throw new Error('not opened');
  const { index } = open.book.find('10-shaft', 'out')!;
  expect((open.frame.memory.numbers[index]! * 30) / Math.PI).toBeCloseTo(1000, 9);
  expect(open.refused).toEqual([]);
});

test('an entry that was refused is kept for whoever asks', () => {
  const givens = [{ name: 'ratio', entry: 'x' }];
  const open = openSheet({ command: 'find', sheet: '10-shaft' }, givens, makeTerminal(SHEETS));
  if (typeof open === 'number') throw new Error('not opened');
  expect(open.refused).toHaveLength(1);
});

test('a sheet that is not there is wrong use of the command', () => {
  const terminal = makeTerminal(SHEETS);
  expect(openSheet({ command: 'find', sheet: 'nope' }, [], terminal)).toBe(2);
  expect(terminal.errors()).toMatch(/no sheet "nope".*\nSee npx layshaft help find\n/);
});

test('problems go to standard error, and the exit code tells of them', () => {
  const terminal = makeTerminal();
  const problem = { ...fail('overflow', { from: 0, to: 1 }, undefined), cell: 'x' };
  expect(complainOf([problem], terminal)).toBe(1);
  expect(complainRecords([sentenceRecord('question', 'Type it.')], terminal)).toBe(1);
  expect(terminal.errors()).toMatch(/^x: .*\nType it\.\n$/);
});
