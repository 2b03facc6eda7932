import { type Book, linkBook } from '../../src/sheet/book.ts';
import type { Cell } from '../../src/sheet/cell.ts';
import { createFrame } from '../../src/sheet/create-frame.ts';
import { enterGiven } from '../../src/sheet/enter.ts';
import type { Frame } from '../../src/sheet/frame.ts';
import type { Outcome } from '../../src/sheet/outcome.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import type { Reading } from '../../src/sheet/reading.ts';
import { outcomeOf, solve } from '../../src/sheet/solve.ts';

/** A book with its frame; a name alone means the first sheet, `sheet/name` any. */
export interface MadeBook {
  readonly book: Book;
  readonly frame: Frame;
  cell(name: string): Cell;
  outcome(name: string): Outcome;
  /** Enters a given; the book is not worked by it. */
  enter(name: string, text: string): Reading;
}

/** Links and solves sheets given by their file names; entries are typed before the solving. */
export function makeBook(
  sheets: Readonly<Record<string, string>>,
  entries: Readonly<Record<string, string>> = {},
): MadeBook {
  const book = linkBook(Object.entries(sheets).map(([file, text]) => readSheet(text, file)));
  const frame = createFrame(book);
  const made: MadeBook = {
    book,
    frame,
    cell: (name) => findCell(book, name),
    outcome: (name) => outcomeOf(book, frame, findCell(book, name).index),
    enter: (name, text) => enterGiven(book, frame, findCell(book, name).index, { text }),
  };
  for (const [name, text] of Object.entries(entries)) made.enter(name, text);
  solve(book, frame);
  return made;
}

/** One sheet, called `made`. */
export function makeSheet(text: string, entries: Readonly<Record<string, string>> = {}): MadeBook {
  return makeBook({ 'made.md': text }, entries);
}

/** One block of a kind, from its lines. */
export function block(opening: string, ...lines: readonly string[]): string {
  return ['```' + opening, ...lines, '```', ''].join('\n');
}

/** The number of a cell in SI; throws with the reason where it has none. */
export function numberOf(made: MadeBook, name: string): number {
  const outcome = made.outcome(name);
  if (outcome.state === 'value' && typeof outcome.value === 'number') return outcome.value;
  throw new Error(`${name}: ${'problem' in outcome ? outcome.problem.message : outcome.state}`);
}

/** The numbers of a list cell in SI. */
export function listOf(made: MadeBook, name: string): readonly number[] {
  const outcome = made.outcome(name);
  if (outcome.state === 'value' && outcome.value instanceof Float64Array) {
    return Array.from(outcome.value);
  }
  throw new Error(`${name}: ${'problem' in outcome ? outcome.problem.message : outcome.state}`);
}

/** The message of a cell without a value. */
export function messageOf(made: MadeBook, name: string): string {
  const outcome = made.outcome(name);
  return 'problem' in outcome ? outcome.problem.message : outcome.state;
}

function findCell(book: Book, name: string): Cell {
  const [sheet, own] = name.includes('/')
    ? (name.split('/') as [string, string])
    : [book.sheets[0]!.name, name];
  const cell = book.find(sheet, own);
  if (cell === undefined) throw new Error(`${sheet} has no ${own}`);
  return cell;
}
