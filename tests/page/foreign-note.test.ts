import { expect, test } from 'vitest';
import { NEW_JOB, withForeignSheet } from '../../src/job/record.ts';
import { createForeignNote } from '../../src/page/foreign-note.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';

const sheet = readSheet('# Mine', '21-mine.md');

test('a sheet from outside is marked, with its hash', () => {
  const job = withForeignSheet(NEW_JOB, '21-mine', { version: '0123456789abcdef', text: '# Mine' });
  const note = createForeignNote(job, sheet);
  expect(note?.textContent).toMatch(/^A sheet from outside\..*0123456789abcdef/);
});

test('a sheet of the house is not', () => {
  expect(createForeignNote(NEW_JOB, sheet)).toBeUndefined();
});
