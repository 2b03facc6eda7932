import type { Problem } from '../language/problem.ts';
import { createFrame } from '../sheet/create-frame.ts';
import type { Frame } from '../sheet/frame.ts';
import { solve } from '../sheet/solve.ts';
import type { GivenArgument } from './command.ts';
import { enterGivens } from './enter-givens.ts';
import { findSheet } from './find-sheet.ts';
import { type Loaded, loadBook } from './load-book.ts';
import { plainBlanks } from './plain-blanks.ts';
import { formatProblem, type ProblemRecord, recordProblem } from './problem-record.ts';
import { type ExitCode, PROBLEM, refuse, type Terminal } from './terminal.ts';

/** A sheet with its readings entered and worked. */
export interface OpenSheet extends Loaded {
  readonly frame: Frame;
  /** Entries that were refused. */
  readonly refused: readonly Problem[];
}

/** Opens the sheet that was named; an exit code where there is none. */
export function openSheet(
  command: { readonly command: string; readonly sheet: string },
  givens: readonly GivenArgument[],
  terminal: Terminal,
): OpenSheet | ExitCode {
  const file = findSheet(terminal, command.sheet);
  if (file.path === undefined) {
    return refuse(terminal, file.sentence, `See npx layshaft help ${command.command}`);
  }
  const loaded = loadBook(terminal, file);
  const frame = createFrame(loaded.book);
  const refused = enterGivens(loaded.book, frame, loaded.sheet.name, givens);
  solve(loaded.book, frame);
  return { ...loaded, frame, refused: refused.map(({ problem }) => problem) };
}

/** Says on standard error what stands in the way of an answer. */
export function complainOf(problems: readonly Problem[], terminal: Terminal): ExitCode {
  return complainRecords(
    problems.map((problem) => recordProblem(problem)),
    terminal,
  );
}

export function complainRecords(records: readonly ProblemRecord[], terminal: Terminal): ExitCode {
  const lines = records.map((record) => `${formatProblem(record)}\n`);
  terminal.complain(plainBlanks(lines.join('')));
  return PROBLEM;
}

/** A sentence with no place of its own as a record. */
export function sentenceRecord(code: string, message: string, cell = ''): ProblemRecord {
  return { code, message, cell, place: '' };
}
