import { expect, test } from 'vitest';
import { loadAll } from '../../src/cli/load-all.ts';
import { NEW_JOB, withForeignSheet } from '../../src/job/record.ts';
import { SHEETS } from './made-sheets.ts';
import { makeTerminal } from './made-terminal.ts';

test('sheets of the house and of the job are one book, in order', () => {
  const job = withForeignSheet(NEW_JOB, '15-mine', { version: '', text: '# Mine' });
  const book = loadAll(makeTerminal(SHEETS), job);
  const numbered = book.sheets.filter(({ number }) => number !== undefined);
  expect(numbered.map(({ name }) => name)).toEqual(['10-shaft', '15-mine', '20-wheel', '30-car']);
});

test('a sheet from outside never takes the place of one of the house', () => {
  const job = withForeignSheet(NEW_JOB, '10-shaft', { version: '', text: '# Not it' });
  const book = loadAll(makeTerminal(SHEETS), job);
  const titles = book.sheets.filter(({ name }) => name === '10-shaft').map(({ title }) => title);
  expect(titles).toEqual(['Shaft']);
});
