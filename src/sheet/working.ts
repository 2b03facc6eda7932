import type { Book } from './book.ts';
import type { Cell, Formula } from './cell.ts';
import { originOf } from './origin.ts';
import { upstreamOf } from './upstream.ts';

/** A cell that is worked out by a formula. */
export type WorkedCell = Extract<Cell, { readonly role: 'work' | 'stack' }> & {
  readonly formula: Formula;
};

/**
 * The working of a result, one line after the other: every formula that it rests on, on whichever sheet,
 * each after those that it needs, the result last.
 */
export function listWorking(book: Book, result: number): readonly WorkedCell[] {
  const needed = upstreamOf(book.cells, [result]);
  return book.order
    .filter((index) => needed.has(index))
    .map((index) => book.cells[index]!)
    .filter((cell): cell is WorkedCell => 'formula' in cell && cell.formula !== undefined);
}

/** What one line rests on directly; what is carried in stands for where it comes from. */
export function listSupports(book: Book, { inputs }: Cell): readonly Cell[] {
  const cells = inputs.flatMap((input) => originOf(book, book.cells[input]) ?? []);
  return [...new Set(cells)];
}
