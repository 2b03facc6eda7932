import type { Frame } from '../sheet/frame.ts';
import { outcomeOf } from '../sheet/solve.ts';
import type { Desk } from './desk.ts';

/** The desk as it would be with another frame on it: for the numbers of a practice question. */
export function createFrameDesk(desk: Desk, frame: Frame): Desk {
  return {
    ...desk,
    frame: () => frame,
    outcomeOf: (cell) => outcomeOf(desk.book, frame, cell),
    readingOf: (cell) => frame.readings[cell.index]!,
    entryOf: () => undefined,
  };
}
