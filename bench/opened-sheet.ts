import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Book, linkBook } from '../src/sheet/book.ts';
import { createFrame } from '../src/sheet/create-frame.ts';
import { dependentsOf } from '../src/sheet/dependents.ts';
import { enterGiven } from '../src/sheet/enter.ts';
import type { Frame } from '../src/sheet/frame.ts';
import { readSheet } from '../src/sheet/read-sheet.ts';
import { solve } from '../src/sheet/solve.ts';

/** A sheet that was opened, with the pieces of work that are timed on it. */
export interface OpenedSheet {
  readonly book: Book;
  readonly frame: Frame;
  /** Works all cells. */
  readonly solve: () => number;
  /** Works these cells only, in their order. */
  readonly solveOnly: (names: ReadonlySet<string>) => () => number;
  /** Enters one of two values in turn and works what hangs on it. */
  readonly change: (given: string, entries: readonly [string, string]) => () => number;
}

/** Reads a sheet and links it: all that happens before the first result is worked. */
export function openBook(text: string, file: string): Book {
  return linkBook([readSheet(text, file)]);
}

/** Opens a sheet from its text and works it once. */
export function openSheet(text: string, file: string): OpenedSheet {
  const book = openBook(text, file);
  const frame = createFrame(book);
  solve(book, frame);
  return {
    book,
    frame,
    solve: () => {
      solve(book, frame);
      return lastNumber(frame);
    },
    solveOnly: (names) => {
      const order = book.order.filter((index) => names.has(book.cells[index]!.name));
      return () => workAll(book, frame, order);
    },
    change: (given, entries) => changeInTurns(book, frame, given, entries),
  };
}

/** Opens one of the project's own sheets. */
export function openNotebook(name: string): OpenedSheet {
  const file = `notebooks/${name}.md`;
  return openSheet(
    readFileSync(fileURLToPath(new URL(`../${file}`, import.meta.url)), 'utf8'),
    file,
  );
}

function workAll(book: Book, frame: Frame, order: readonly number[]): number {
  solve(book, frame, order);
  return lastNumber(frame);
}

function changeInTurns(
  book: Book,
  frame: Frame,
  given: string,
  entries: readonly [string, string],
): () => number {
  const { index } = book.cells.find(({ name }) => name === given)!;
  const dependents = dependentsOf(book);
  const rank = new Uint32Array(book.cells.length);
  book.order.forEach((cell, place) => {
    rank[cell] = place;
  });
  let turn = 0;
  return () => {
    turn = 1 - turn;
    enterGiven(book, frame, index, { text: entries[turn]! });
    const moved = [...dependents(index)].sort((a, b) => rank[a]! - rank[b]!);
    return workAll(book, frame, moved);
  };
}

function lastNumber({ memory }: Frame): number {
  return memory.numbers[memory.blanks.length - 1]!;
}
