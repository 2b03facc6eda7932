import type { Book } from './book.ts';
import type { Cell } from './cell.ts';
import type { Frame } from './frame.ts';
import { outcomeOf } from './solve.ts';

/**
 * What the elements of a list result are called: as the lines of a chart that draws it, else by the
 * one list of words on the sheet that is as long. Undefined where nothing names them.
 */
export function elementNames(book: Book, frame: Frame, cell: Cell): readonly string[] | undefined {
  const length = lengthOf(book, frame, cell);
  if (length === undefined) return undefined;
  const drawn = book.charts
    .filter(({ sheet }) => sheet === cell.sheet)
    .filter(({ statement }) => statement.results.some(({ name }) => name === cell.name))
    .flatMap(({ statement }) => statement.lines?.name ?? []);
  const candidates = drawn.length > 0 ? drawn : wordLists(book, cell.sheet);
  const fitting = candidates
    .map((name) => textsOf(book, frame, book.find(cell.sheet, name)))
    .filter((texts) => texts?.length === length);
  return fitting.length === 1 || drawn.length > 0 ? fitting[0] : undefined;
}

function wordLists(book: Book, sheet: string): readonly string[] {
  return book
    .cellsOf(sheet)
    .filter(({ kind }) => kind?.type === 'texts')
    .map(({ name }) => name);
}

function lengthOf(book: Book, frame: Frame, { index }: Cell): number | undefined {
  const outcome = outcomeOf(book, frame, index);
  if (outcome.state !== 'value' || !(outcome.value instanceof Float64Array)) return undefined;
  return outcome.value.length;
}

function textsOf(book: Book, frame: Frame, cell: Cell | undefined): readonly string[] | undefined {
  const outcome = cell && outcomeOf(book, frame, cell.index);
  if (cell?.kind?.type !== 'texts' || outcome?.state !== 'value') return undefined;
  return outcome.value as readonly string[];
}
