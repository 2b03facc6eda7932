import type { Book } from './book.ts';

/** Gives, for a cell, itself and every cell that hangs on it. */
export type Dependents = (index: number) => ReadonlySet<number>;

const KNOWN = new WeakMap<Book, Dependents>();

/** Turns the reads of a book round, once a book; each question then costs only what it finds. */
export function dependentsOf(book: Book): Dependents {
  const known = KNOWN.get(book) ?? turnRound(book);
  KNOWN.set(book, known);
  return known;
}

function turnRound(book: Book): Dependents {
  const readers: number[][] = book.cells.map(() => []);
  const ordered = new Set(book.order);
  for (const { index, inputs } of book.cells) {
    if (ordered.has(index)) for (const input of inputs) readers[input]!.push(index);
  }
  return (index) => {
    const found = new Set([index]);
    for (const cell of found) for (const reader of readers[cell]!) found.add(reader);
    return found;
  };
}
