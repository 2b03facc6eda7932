import type { Book } from '../sheet/book.ts';
import type { Cell } from '../sheet/cell.ts';
import type { Sheet } from '../sheet/sheet.ts';

/**
 * The results that a sheet is worked for, in the order of the sheet: before all those that end a
 * calculation and tell what to do, then those that other sheets carry on. Where nothing is worked,
 * what was carried in. What a check judges is told by the check.
 */
export function chooseResults(book: Book, sheet: Sheet, most: number): readonly Cell[] {
  const judged = new Set(book.checks.flatMap(({ subject }) => subject ?? []));
  const cells = book
    .cellsOf(sheet.name)
    .filter(({ kind, index }) => kind?.type === 'quantity' && !judged.has(index));
  const worked = cells.filter(({ role }) => role === 'work' || role === 'stack');
  if (worked.length === 0) return cells.filter(({ role }) => role === 'from').slice(0, most);
  const rank = createRank(book, sheet);
  return worked
    .filter((cell) => rank(cell) < ON_THE_WAY)
    .toSorted((a, b) => rank(a) - rank(b))
    .slice(0, most)
    .toSorted((a, b) => a.index - b.index);
}

function createRank(book: Book, sheet: Sheet): (cell: Cell) => number {
  const own = book.cellsOf(sheet.name);
  const read = new Set(own.flatMap(({ inputs }) => inputs));
  const origins = book.cells.flatMap((cell) => (cell.role === 'from' ? (cell.origin ?? []) : []));
  const carried = new Set(origins);
  return (cell) => {
    const ends = !read.has(cell.index);
    if (ends && tellsWhatToDo(cell)) return 0;
    if (carried.has(cell.index)) return ends ? 1 : 2;
    return ends || tellsWhatToDo(cell) ? 3 : ON_THE_WAY;
  };
}

/** A step on the way to something else. */
const ON_THE_WAY = 4;

/** Its sign has words on both sides: one way, do this; the other way, that. */
function tellsWhatToDo(cell: Cell): boolean {
  if (cell.role !== 'work') return false;
  const { positive, negative } = cell.statement.signs;
  return positive !== undefined && negative !== undefined;
}
