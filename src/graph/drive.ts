import { Runtime, type Variable } from '@observablehq/runtime';
import type { Book } from '../sheet/book.ts';
import { createFrame } from '../sheet/create-frame.ts';
import { dependentsOf } from '../sheet/dependents.ts';
import { enterGiven } from '../sheet/enter.ts';
import type { Frame } from '../sheet/frame.ts';
import type { Entry, Reading } from '../sheet/reading.ts';
import { evaluate } from '../sheet/solve.ts';

/** A book kept up to date: enter a given, and all that hangs on it is worked again. */
export interface Drive {
  /** Values as they stand; read them with `outcomeOf` after `onWorked` or `settled`. */
  readonly frame: Frame;
  /** How often each cell was worked. */
  readonly counts: Uint32Array;
  /** Enters a given; undefined for the sheet's own value. What hangs on it follows in the next frame. */
  enter(index: number, entry: Entry | undefined): Reading;
  /** Resolves when nothing is left to be worked. */
  settled(): Promise<void>;
  dispose(): void;
}

/**
 * Drives a book with the reactive runtime, one variable a cell, so that a change costs only what
 * depends on it. The runtime works in animation frames: in a hidden page it rests.
 *
 * @param onWorked called with the index of each cell that was worked
 * @param frame what it drives; one of its own where none is given
 */
export function createDrive(
  book: Book,
  onWorked: (index: number) => void = () => {},
  frame: Frame = createFrame(book),
): Drive {
  const counts = new Uint32Array(book.cells.length);
  const dependents = dependentsOf(book);
  const pending = new Set<number>(book.cells.keys());
  let waiting: (() => void)[] = [];
  // Names come from the book alone: a name that it lacks must not find a global of the page.
  const runtime = new Runtime({}, () => undefined);
  const variables = createVariables(book, runtime, work, done);

  function work(index: number): void {
    evaluate(book, frame, index);
    counts[index]! += 1;
  }

  function done(index: number): void {
    pending.delete(index);
    onWorked(index);
    if (pending.size > 0) return;
    const resolvers = waiting;
    waiting = [];
    for (const resolve of resolvers) resolve();
  }

  return {
    frame,
    counts,
    enter(index, entry) {
      const reading = enterGiven(book, frame, index, entry);
      for (const dependent of dependents(index)) pending.add(dependent);
      variables[index]!.define(book.cells[index]!.id, [], () => work(index));
      return reading;
    },
    settled: () =>
      pending.size === 0 ? Promise.resolve() : new Promise((resolve) => waiting.push(resolve)),
    dispose: () => runtime.dispose(),
  };
}

/** One variable a cell; a cell in a loop has no inputs, so that the runtime never meets the loop. */
function createVariables(
  book: Book,
  runtime: Runtime,
  work: (index: number) => void,
  done: (index: number) => void,
): readonly Variable[] {
  const module = runtime.module();
  const ordered = new Set(book.order);
  return book.cells.map(({ index, id, inputs }) => {
    const names = ordered.has(index) ? inputs.map((input) => book.cells[input]!.id) : [];
    const observer = { fulfilled: () => done(index), rejected: raise };
    return module.variable(observer).define(id, names, () => work(index));
  });
}

/** A cell that fails is a value, so whatever arrives here is a fault of the program. */
function raise(error: unknown): never {
  throw error;
}
