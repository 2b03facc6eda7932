import { expect, test } from 'vitest';
import { listMisfits } from '../../src/job/fit.ts';
import { NEW_JOB, withEntry, withNote, withSheetVersion, withTick } from '../../src/job/record.ts';
import { textVersion } from '../../src/job/sheet-version.ts';
import { linkBook } from '../../src/sheet/book.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';

const SHEET = '# A\n\n```given\nwidth = 3 in\n```\n\n```work\narea = width ^ 2\n```\n';
const book = linkBook([readSheet(SHEET, '10-a.md')]);
const fitting = withSheetVersion(
  withEntry(NEW_JOB, '10-a', 'width', { text: '4', unit: 'in' }),
  '10-a',
  textVersion(SHEET),
);

test('a job beside the sheets that it was filled in on fits', () => {
  expect(listMisfits(fitting, book)).toEqual([]);
  expect(listMisfits(NEW_JOB, book)).toEqual([]);
});

test('a sheet whose text is another is told, though everything still has its place', () => {
  expect(listMisfits(withSheetVersion(fitting, '10-a', 'older'), book)).toEqual([
    { sheet: '10-a', isGone: false, isChanged: true, strays: [] },
  ]);
});

test('what has no place any more is listed with what it says', () => {
  let job = withEntry(fitting, '10-a', 'height', { text: '5', unit: 'in' });
  job = withEntry(job, '10-a', 'area', { text: '16' });
  job = withTick({ ...job, worker: 'Ann' }, '10-a', 'clean', '2026-03-14');
  job = withNote(job, '10-a', 'stack gap', 'Burr');
  job = withNote(job, '10-a', 'given width', 'Has its place');
  expect(listMisfits(job, book)).toEqual([
    {
      sheet: '10-a',
      isGone: false,
      isChanged: false,
      strays: [
        { what: 'entry', name: 'height', text: '5 in' },
        { what: 'entry', name: 'area', text: '16' },
        { what: 'step', name: 'clean', text: '2026-03-14, Ann' },
        { what: 'note', name: 'stack gap', text: 'Burr' },
      ],
    },
  ]);
});

test('a sheet that is gone is told with all that was entered on it', () => {
  const job = withEntry(NEW_JOB, '__proto__', 'constructor', { text: '5' });
  expect(listMisfits(job, book)).toEqual([
    {
      sheet: '__proto__',
      isGone: true,
      isChanged: false,
      strays: [{ what: 'entry', name: 'constructor', text: '5' }],
    },
  ]);
});
