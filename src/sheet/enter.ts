import { readEntry } from '../language/entry.ts';
import type { Kind, Value } from '../language/kind.ts';
import type { Memory } from '../language/memory.ts';
import { fail, type Problem } from '../language/problem.ts';
import { nearest } from '../units/nearest.ts';
import { parseUnit } from '../units/parse-unit.ts';
import type { Book } from './book.ts';
import type { GivenCell } from './cell.ts';
import type { Frame } from './frame.ts';
import type { Entry, Reading } from './reading.ts';

/**
 * Enters a given. Mutates the frame: the given's value and reading; cells that hang on it are to be
 * worked after it.
 *
 * @param entry what was typed; undefined for the value that the sheet itself holds
 * @returns what was understood of it
 */
export function enterGiven(
  book: Book,
  frame: Frame,
  index: number,
  entry: Entry | undefined,
): Reading {
  const cell = book.cells[index] as GivenCell;
  const reading = cell.kind === undefined ? brokenReading(cell) : readGiven(book, cell, entry);
  frame.readings[index] = reading;
  storeReading(frame.memory, index, cell.kind, reading);
  return reading;
}

function brokenReading(cell: GivenCell): Reading {
  return { state: 'failed', problem: cell.problem! };
}

/** Mutates the memory. */
function storeReading(
  memory: Memory,
  index: number,
  kind: Kind | undefined,
  reading: Reading,
): void {
  memory.blanks[index] = reading.state === 'blank' ? 1 : 0;
  storeValue(memory, index, kind, reading.state === 'value' ? reading.value : undefined);
}

/** Mutates the memory: puts a value where its kind has its place; undefined for none. */
export function storeValue(
  memory: Memory,
  index: number,
  kind: Kind | undefined,
  value: Value | undefined,
): void {
  if (kind?.type === 'quantity' || kind?.type === 'truth') {
    memory.numbers[index] = value === undefined ? Number.NaN : Number(value);
  } else memory.others[index] = value;
}

/** What is understood of an entry of this given; the sheet's own value where there is none. */
export function readGiven(book: Book, cell: GivenCell, entry: Entry | undefined): Reading {
  if (entry === undefined) return readDefault(book, cell);
  const row = maybeRow(book, cell, entry.text);
  if (row !== undefined) return row;
  if (cell.kind!.type === 'row') return unknownRow(book, cell, entry.text);
  const unit = entry.unit === undefined ? cell.display.unit : parseUnit(entry.unit);
  return readEntry(entry.text, { kind: cell.kind!, ...(unit === undefined ? {} : { unit }) });
}

function readDefault(book: Book, cell: GivenCell): Reading {
  const { value } = cell.statement;
  switch (value.type) {
    case 'entry':
      return readEntry(value.text, expectedOf(cell));
    case 'blank':
      return { state: 'blank' };
    case 'text':
      return { state: 'value', value: value.value, explicit: false };
    case 'pick':
      return maybeRow(book, cell, value.row)!;
    default:
      return value satisfies never;
  }
}

function expectedOf({ kind, display }: GivenCell) {
  return { kind: kind!, ...(display.unit === undefined ? {} : { unit: display.unit }) };
}

/** The row of a table whose first cell is this text, in whatever case. */
function maybeRow(book: Book, cell: GivenCell, text: string): Reading | undefined {
  const row = rowsOf(book, cell).find(({ key }) => sameWords(key, text));
  if (row === undefined) return undefined;
  const column = cell.statement.value.type === 'pick' ? cell.statement.value.column : undefined;
  const value = column === undefined ? row : row.cells.get(column)!;
  return { state: 'value', value, explicit: false, row: row.key };
}

/** The rows that a given can be picked from; none where it is typed only. */
export function rowsOf(book: Book, cell: GivenCell) {
  const table = cell.table === undefined ? undefined : book.cells[cell.table];
  return table?.role === 'table' ? table.rows : [];
}

function sameWords(a: string, b: string): boolean {
  return a.trim().toLowerCase() === b.trim().toLowerCase();
}

function unknownRow(book: Book, cell: GivenCell, text: string): Reading {
  if (text.trim() === '') return { state: 'blank' };
  const table = book.cells[cell.table!]!;
  const keys = rowsOf(book, cell).map(({ key }) => key);
  const details = { table: table.label, row: text, near: nearest(text, keys) };
  const problem: Problem = fail('unknown-row', { from: 0, to: text.length }, details);
  return { state: 'failed', problem };
}
