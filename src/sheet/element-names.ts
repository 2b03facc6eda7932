import type { Book } from './book.ts';
import type { Cell } from './cell.ts';
import { dependentsOf } from './dependents.ts';
import type { Frame } from './frame.ts';
import { outcomeOf } from './solve.ts';

type Names = readonly string[];

/**
 * What the elements of a list result are called: as the lines of a chart that draws it; else by the
 * one list of words that comes from the same list as the result, or from one that it is set against
 * in a later formula, those first that name the lines of
 * a chart, and its own sheet before those that it is carried from; else as the rows of the table
 * that it was worked from. Of the same length alone is not enough: five gears are not five tubes.
 * Undefined where nothing names them.
 */
export function elementNames(book: Book, frame: Frame, cell: Cell): Names | undefined {
  const length = lengthOf(book, frame, cell);
  if (length === undefined || cell.kind?.type !== 'list') return undefined;
  const fitting = (cells: readonly Cell[]) =>
    [...new Set(cells)].filter((one) => lengthOf(book, frame, one) === length);
  const drawn = lineNames(book, cell.sheet, cell.name);
  if (drawn.length > 0) return textsOf(book, frame, fitting(drawn)[0]);
  const roots = rootsOf(book, frame, cell, length);
  const joined = joinedWith(book, frame, cell, length);
  const named = [roots, joined].flatMap((lists) => namesAmong(lists) ?? [])[0];
  const table = only([...roots].filter(({ role }) => role === 'table'));
  return textsOf(book, frame, named) ?? keysOf(table);

  function namesAmong(lists: ReadonlySet<Cell>): Cell | undefined {
    const kin = (cells: readonly Cell[]) =>
      only(fitting(cells).filter((one) => isKin(lists, rootsOf(book, frame, one, length!))));
    return [...new Set([...lists].map(({ sheet }) => sheet))]
      .map((sheet) => kin(lineNames(book, sheet)) ?? kin(wordLists(book, sheet)))
      .find((one) => one !== undefined);
  }
}

/** What names the lines of the charts on a sheet; of those only that draw a result, if one is named. */
function lineNames({ charts, find }: Book, sheet: string, result?: string): readonly Cell[] {
  return charts
    .filter((chart) => chart.sheet === sheet)
    .filter(({ statement: { results } }) =>
      result === undefined ? true : results.some(({ name }) => name === result),
    )
    .flatMap(({ statement: { lines } }) => (lines && find(sheet, lines.name)) ?? []);
}

function wordLists(book: Book, sheet: string): readonly Cell[] {
  return book.cellsOf(sheet).filter(({ kind }) => kind?.type === 'texts');
}

/** A list with all that it is worked from, element by element: lists and tables as long as it is. */
function rootsOf(book: Book, frame: Frame, cell: Cell, length: number): ReadonlySet<Cell> {
  const roots = new Set([cell]);
  for (const { role, inputs } of roots) {
    // A list that is picked is one row of its table, not its rows.
    for (const index of role === 'given' ? [] : inputs) {
      if (lengthOf(book, frame, book.cells[index]!) === length) roots.add(book.cells[index]!);
    }
  }
  return roots;
}

/** The list with those that it meets, element by element, in what is worked from it. */
function joinedWith(book: Book, frame: Frame, cell: Cell, length: number): ReadonlySet<Cell> {
  const results = [...dependentsOf(book)(cell.index)]
    .map((index) => book.cells[index]!)
    .filter(({ sheet, kind }) => sheet === cell.sheet && kind?.type === 'list')
    .filter((one) => rootsOf(book, frame, one, length).has(cell));
  return new Set([cell, ...results.flatMap((one) => [...rootsOf(book, frame, one, length)])]);
}

/** From the same list; or both put together of single values where they stand. */
function isKin(some: ReadonlySet<Cell>, others: ReadonlySet<Cell>): boolean {
  return [...some].some((root) => others.has(root)) || (isMade(some) && isMade(others));
}

function isMade(roots: ReadonlySet<Cell>): boolean {
  return roots.size === 1 && [...roots].every(({ role }) => role === 'work');
}

function only<T>(list: readonly T[]): T | undefined {
  return list.length === 1 ? list[0] : undefined;
}

/** Of a list its elements, of a table its rows; undefined for anything else. */
function lengthOf(book: Book, frame: Frame, cell: Cell): number | undefined {
  if (cell.role === 'table') return cell.rows.length;
  const outcome = outcomeOf(book, frame, cell.index);
  if (outcome.state !== 'value') return undefined;
  const { value } = outcome;
  return value instanceof Float64Array || Array.isArray(value) ? value.length : undefined;
}

function textsOf(book: Book, frame: Frame, cell: Cell | undefined): Names | undefined {
  const outcome = cell && outcomeOf(book, frame, cell.index);
  if (cell?.kind?.type !== 'texts' || outcome?.state !== 'value') return undefined;
  return outcome.value as Names;
}

function keysOf(table: Cell | undefined): Names | undefined {
  return table?.role === 'table' ? table.rows.map(({ key }) => key) : undefined;
}
