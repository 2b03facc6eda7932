import { formatIssue, parseJobFile } from '../job/read-job.ts';
import { type Job, NEW_JOB } from '../job/record.ts';
import { fail, type Problem } from '../language/problem.ts';
import type { Book } from '../sheet/book.ts';
import { enterGiven } from '../sheet/enter.ts';
import type { Frame } from '../sheet/frame.ts';
import { originOf } from '../sheet/origin.ts';
import type { EntryProblem } from './enter-givens.ts';
import type { Terminal } from './terminal.ts';

/** A job file as opened, with what of it could not be read. */
export interface OpenedJob {
  readonly path: string;
  readonly job: Job;
  readonly problems: readonly EntryProblem[];
}

export const NO_JOB: OpenedJob = { path: '', job: NEW_JOB, problems: [] };

/** The job in a file; a job of nothing where none is named; a sentence where it cannot be had. */
export function readStoredJob(terminal: Terminal, path: string | undefined): OpenedJob | string {
  if (path === undefined) return NO_JOB;
  const text = terminal.readText(path);
  if (text === undefined) return `there is no job file "${path}"`;
  const reading = parseJobFile(text);
  if (!reading.ok) return `${path}: ${reading.message}`;
  const problems = reading.issues.map((issue) => ({ problem: amiss(path, formatIssue(issue)) }));
  return { path, job: reading.job, problems };
}

/** What is amiss with a job's file, placed at the file as a whole. */
export function amiss(path: string, message: string): Problem {
  const place = { file: path, line: 1, column: 1 };
  return { ...fail('unreadable-job', { from: 0, to: 0 }, { message }), place };
}

/** Enters what a job holds. Mutates the frame. What is of sheets that are not open is passed by. */
export function enterJob(
  book: Book,
  frame: Frame,
  { entries }: Job,
  path: string,
): readonly EntryProblem[] {
  return Object.entries(entries).flatMap(([sheet, own]) =>
    Object.entries(own).flatMap(([name, entry]) => {
      const cell = originOf(book, book.find(sheet, name));
      if (cell?.role !== 'given') return [];
      const reading = enterGiven(book, frame, cell.index, entry);
      if (reading.state !== 'failed') return [];
      const place = { file: path, line: 1, column: 1 };
      return [{ problem: { ...reading.problem, place, cell: cell.id }, cell }];
    }),
  );
}
