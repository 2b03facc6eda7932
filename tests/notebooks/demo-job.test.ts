import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { listMisfits } from '../../src/job/fit.ts';
import { parseJobFile } from '../../src/job/read-job.ts';
import { entryIn, tickIn } from '../../src/job/record.ts';
import { workColumns, workJob } from '../../src/job/work-columns.ts';
import { FAILS_ON_PURPOSE } from '../support/fails-on-purpose.ts';
import { openNotebooks } from '../support/notebooks.ts';
import { ROOT } from '../support/source-tree.ts';
import { verdicts } from '../support/verdicts.ts';

const READING = parseJobFile(readFileSync(join(ROOT, 'shared/demo-job.json'), 'utf8'));
if (!READING.ok) throw new Error(READING.message);
const { job, issues } = READING;
const BOOK = openNotebooks();
const { frame, faults } = workJob(BOOK, job);
/** The guide to writing sheets is no part of a job. */
const SHEETS = BOOK.sheets.filter(({ number }) => number !== undefined && number > 0);

test('the demo is read whole and fits the sheets', () => {
  expect(issues).toEqual([]);
  expect(faults).toEqual([]);
  expect(listMisfits(job, BOOK)).toEqual([]);
});

test('every reading of every sheet has been taken', () => {
  const missing = SHEETS.flatMap(({ name }) =>
    BOOK.cellsOf(name).filter(
      (cell) =>
        cell.role === 'given' &&
        cell.statement.how !== undefined &&
        cell.statement.value.type !== 'blank' &&
        entryIn(job, name, cell.name) === undefined,
    ),
  );
  expect(missing.map(({ id }) => id)).toEqual([]);
});

test('every step is signed, sheet after sheet', () => {
  const days = SHEETS.toSorted((a, b) => a.number! - b.number!).flatMap((sheet) =>
    sheet.parts.flatMap((part) =>
      part.kind === 'steps' ? part.steps.map(({ id }) => tickIn(job, sheet.name, id)) : [],
    ),
  );
  expect(days.every((tick) => tick?.by === job.worker)).toBe(true);
  expect(days.map((tick) => tick!.on)).toEqual(days.map((tick) => tick!.on).toSorted());
});

test.each(SHEETS.map(({ name }) => name))(
  '%s: every check is decided, and what fails does so to teach',
  (sheet) => {
    const found = verdicts({ book: BOOK, frame, sheet });
    const failing = Object.keys(found).filter((check) => found[check] !== 'pass');
    expect(failing.toSorted()).toEqual(Object.keys(FAILS_ON_PURPOSE[sheet] ?? {}).toSorted());
    for (const check of failing) expect(found[check]).toBe('fail');
  },
);

test('its proposals can be worked', () => {
  const columns = workColumns(BOOK, job);
  expect(columns.map(({ variant }) => variant)).toEqual([
    undefined,
    'Shorter axle',
    'Close five-speed',
  ]);
  expect(columns.flatMap((column) => column.faults)).toEqual([]);
});
