import { createFrame } from '../sheet/create-frame.ts';
import { solve as solveBook } from '../sheet/solve.ts';
import type { GivenArgument, SolveCommand } from './command.ts';
import { enterGivens } from './enter-givens.ts';
import { enterJob, NO_JOB, type OpenedJob, readStoredJob } from './enter-job.ts';
import { findSheet } from './find-sheet.ts';
import { formatRecord } from './format-record.ts';
import { type Loaded, loadBook } from './load-book.ts';
import { plainBlanks } from './plain-blanks.ts';
import { recordChecks } from './record-checks.ts';
import { recordProblems } from './record-problems.ts';
import { recordResults } from './record-results.ts';
import type { SolveRecord } from './solve-record.ts';
import { DONE, type ExitCode, PROBLEM, refuse, type Terminal } from './terminal.ts';

/** `layshaft solve`: works a sheet and prints what came of it. */
export function solve(command: SolveCommand, terminal: Terminal): ExitCode {
  const file = findSheet(terminal, command.sheet);
  if (file.path === undefined)
    return refuse(terminal, file.sentence, 'See npx layshaft help solve');
  const job = readStoredJob(terminal, command.job);
  if (typeof job === 'string') return refuse(terminal, job, 'See npx layshaft help solve');
  const loaded = loadBook(terminal, file);
  const record = recordSolve(loaded, command.givens, job);
  const text = command.json ? `${JSON.stringify(record, null, 2)}\n` : formatRecord(loaded, record);
  terminal.write(plainBlanks(text));
  return record.problems.length === 0 ? DONE : PROBLEM;
}

/** The sheet worked with these entries, as a record. */
export function recordSolve(
  { book, sheet }: Loaded,
  givens: readonly GivenArgument[],
  job: OpenedJob = NO_JOB,
): SolveRecord {
  const frame = createFrame(book);
  const named = new Set(givens.map(({ name }) => book.find(sheet.name, name)?.index));
  const stored = enterJob(book, frame, job.job, job.path).filter(
    ({ cell }) => !named.has(cell?.index),
  );
  const refused = [...job.problems, ...stored, ...enterGivens(book, frame, sheet.name, givens)];
  solveBook(book, frame);
  return {
    sheet: sheet.name,
    results: recordResults(book, frame, sheet.name),
    checks: recordChecks(book, frame, sheet.name),
    problems: recordProblems(book, frame, sheet.name, refused),
  };
}
