import { createMemory } from '../language/memory.ts';
import type { Book } from './book.ts';
import { enterGiven } from './enter.ts';
import type { Frame } from './frame.ts';

/** A frame in which every given holds its sheet's own value; nothing is worked yet. */
export function createFrame(book: Book): Frame {
  const frame: Frame = {
    memory: createMemory(book.cells.length, book.constants),
    readings: new Array(book.cells.length).fill(undefined),
  };
  for (const cell of book.cells) {
    if (cell.role === 'table') frame.memory.others[cell.index] = cell.rows;
    if (cell.role === 'given') enterGiven(book, frame, cell.index, undefined);
  }
  return frame;
}
