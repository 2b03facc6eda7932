import type { Book } from './book.ts';
import type { Cell } from './cell.ts';
import type { Frame } from './frame.ts';
import { outcomeOf } from './solve.ts';

/**
 * What the elements of a list result are called: as the lines of a chart that draws it; else as the
 * lines of any chart on the sheet, else by a list of words, where just one of these is as long.
 * Undefined where nothing names them.
 */
export function elementNames(book: Book, frame: Frame, cell: Cell): readonly string[] | undefined {
  const length = lengthOf(book, frame, cell);
  if (length === undefined) return undefined;
  const fitting = (names: readonly string[]) =>
    [...new Set(names)]
      .map((name) => textsOf(book, frame, book.find(cell.sheet, name)))
      .filter((texts) => texts?.length === length);
  const drawn = lineNames(book, cell.sheet, cell.name);
  if (drawn.length > 0) return fitting(drawn)[0];
  return only(fitting(lineNames(book, cell.sheet))) ?? only(fitting(wordLists(book, cell.sheet)));
}

/** What names the lines of the charts on a sheet; of those only that draw a result, if one is named. */
function lineNames({ charts }: Book, sheet: string, result?: string): readonly string[] {
  return charts
    .filter((chart) => chart.sheet === sheet)
    .filter(({ statement: { results } }) =>
      result === undefined ? true : results.some(({ name }) => name === result),
    )
    .flatMap(({ statement }) => statement.lines?.name ?? []);
}

function only<T>(list: readonly T[]): T | undefined {
  return list.length === 1 ? list[0] : undefined;
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
