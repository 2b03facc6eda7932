import type { Cell } from './cell.ts';

/** The cell at the start of the chain of sheets that a value is carried over; any other is its own. */
export function originOf(
  book: { readonly cells: readonly Cell[] },
  cell: Cell | undefined,
): Cell | undefined {
  let at = cell;
  for (let left = book.cells.length; left > 0 && at?.role === 'from'; left -= 1) {
    at = at.origin === undefined ? undefined : book.cells[at.origin];
  }
  return at;
}
