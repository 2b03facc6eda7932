import { type Book, linkBook } from '../../src/sheet/book.ts';
import { createFrame } from '../../src/sheet/create-frame.ts';
import { enterGiven } from '../../src/sheet/enter.ts';
import type { Frame } from '../../src/sheet/frame.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import type { Reading } from '../../src/sheet/reading.ts';
import { outcomeOf, solve } from '../../src/sheet/solve.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';
import { readTree } from './source-tree.ts';

/** What a person types, by the name of the given. */
export type Entries = Readonly<Record<string, string>>;

/** The sheets that the project comes with, linked. */
export function openNotebooks(): Book {
  return linkBook([...readTree('notebooks', ['.md'])].map(([path, text]) => readSheet(text, path)));
}

/** A book of one sheet, from its text. */
export function openText(source: string): Book {
  return linkBook([readSheet(source, 'made.md')]);
}

/** A sheet with these entries typed into it, worked through. */
export interface Worked {
  readonly book: Book;
  readonly frame: Frame;
  readonly sheet: string;
}

/** Types the entries into the sheet and works the whole book. */
export function work(book: Book, sheet: string, entries: Entries = {}): Worked {
  const frame = createFrame(book);
  for (const [name, text] of Object.entries(entries)) {
    enter({ book, frame, sheet }, name, text);
  }
  solve(book, frame);
  return { book, frame, sheet };
}

/** Types one entry and gives what was understood. Mutates the frame; the book is not worked. */
export function enter(worked: Worked, name: string, text: string): Reading {
  return enterGiven(worked.book, worked.frame, cellIndex(worked.book, worked.sheet, name), {
    text,
  });
}

/** The numbers of a result in a unit, as a list also where it is one number; throws where it has none. */
export function numbersIn(worked: Worked, name: string, symbol: string): number[] {
  const outcome = outcomeOf(worked.book, worked.frame, cellIndex(worked.book, worked.sheet, name));
  if (outcome.state !== 'value') throw new Error(`${name}: ${describe(outcome)}`);
  const unit = symbol === '' ? 1 : parseUnit(symbol)!.factor;
  const { value } = outcome;
  if (typeof value === 'number') return [value / unit];
  if (value instanceof Float64Array) return Array.from(value, (number) => number / unit);
  throw new Error(`${name} holds no numbers`);
}

/** The one number of a result in a unit. */
export function numberIn(worked: Worked, name: string, symbol: string): number {
  const numbers = numbersIn(worked, name, symbol);
  if (numbers.length !== 1) throw new Error(`${name} holds ${numbers.length} numbers`);
  return numbers[0]!;
}

/** Of the sheet, or of another where the name says so: `70-release-bearing/lever_ratio`. */
export function cellIndex(book: Book, sheet: string, name: string): number {
  const [own, other] = name.split('/').reverse() as [string, string?];
  const cell = book.find(other ?? sheet, own);
  if (cell === undefined) throw new Error(`${other ?? sheet} has no ${own}`);
  return cell.index;
}

function describe(outcome: { readonly state: string; readonly problem?: { message: string } }) {
  return outcome.problem?.message ?? outcome.state;
}
