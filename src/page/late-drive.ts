import type { Drive } from '../graph/drive.ts';
import type { Book } from '../sheet/book.ts';
import { createFrame } from '../sheet/create-frame.ts';
import { dependentsOf } from '../sheet/dependents.ts';
import { enterGiven } from '../sheet/enter.ts';
import { solve } from '../sheet/solve.ts';

export type LateDrive = Omit<Drive, 'counts'>;

/**
 * A drive whose runtime comes after the first results. Until it is there, a change works the whole
 * book, with the same closures and on the same frame; if it never comes, that goes on.
 *
 * @param onWorked called with the index of each cell that was worked
 */
export function createLateDrive(book: Book, onWorked: (index: number) => void): LateDrive {
  const frame = createFrame(book);
  const dependents = dependentsOf(book);
  let drive: Drive | undefined;
  let disposed = false;
  let waiting = false;
  // What the runtime works first is what has been worked already, and nobody needs to hear of it.
  let quiet = true;

  const arrived = import('../graph/drive.ts').then(
    ({ createDrive }) => {
      if (!disposed) drive = createDrive(book, (index) => !quiet && onWorked(index), frame);
    },
    () => {},
  );

  function solveSoon(): void {
    if (waiting) return;
    waiting = true;
    queueMicrotask(() => {
      waiting = false;
      solve(book, frame);
    });
  }

  return {
    frame,
    enter(index, entry) {
      quiet &&= drive === undefined;
      if (drive !== undefined) return drive.enter(index, entry);
      const reading = enterGiven(book, frame, index, entry);
      solveSoon();
      for (const dependent of dependents(index)) onWorked(dependent);
      return reading;
    },
    settled: () => arrived.then(() => drive?.settled()),
    dispose() {
      disposed = true;
      drive?.dispose();
    },
  };
}
