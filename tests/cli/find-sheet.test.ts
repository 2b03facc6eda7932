import { expect, test } from 'vitest';
import { findSheet, listSheets } from '../../src/cli/find-sheet.ts';
import { makeTerminal } from './made-terminal.ts';

const TERMINAL = makeTerminal({
  'notebooks/20-gearing.md': 'gearing',
  'notebooks/70-release-bearing.md': 'bearing',
  'notebooks/notes.txt': '',
  'mine/20-gearing.md': 'my own',
});

test.each([
  ['notebooks/20-gearing.md', 'notebooks/20-gearing.md', 'notebooks'],
  ['notebooks/20-gearing', 'notebooks/20-gearing.md', 'notebooks'],
  ['20-gearing.md', 'notebooks/20-gearing.md', 'notebooks'],
  ['20-gearing', 'notebooks/20-gearing.md', 'notebooks'],
  ['mine/20-gearing', 'mine/20-gearing.md', 'mine'],
])('%s is found at %s', (named, path, folder) => {
  expect(findSheet(TERMINAL, named)).toMatchObject({ path, folder });
});

test('a sheet that is not there is refused with the nearest names', () => {
  expect(findSheet(TERMINAL, '20-gearin')).toEqual({
    sentence: 'there is no sheet "20-gearin"; did you mean 20-gearing?',
  });
});

test.each(['', '.md', 'notebooks', 'nothing/like/it'])('"%s" is no sheet', (named) => {
  expect(findSheet(TERMINAL, named)).toEqual({ sentence: `there is no sheet "${named}"` });
});

test('sheets are the Markdown files of the first folder that has any', () => {
  expect(listSheets(TERMINAL)).toEqual(['20-gearing', '70-release-bearing']);
  expect(listSheets({ ...TERMINAL, sheetFolders: ['none', 'mine'] })).toEqual(['20-gearing']);
  expect(listSheets({ ...TERMINAL, sheetFolders: [] })).toEqual([]);
});
