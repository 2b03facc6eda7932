import { fail, type Problem } from '../language/problem.ts';
import type { Book } from '../sheet/book.ts';
import type { Cell } from '../sheet/cell.ts';
import { enterGiven } from '../sheet/enter.ts';
import type { Frame } from '../sheet/frame.ts';
import { originOf } from '../sheet/origin.ts';
import { nearest } from '../units/nearest.ts';
import type { GivenArgument } from './command.ts';

/** An entry that could not be entered, and the cell that it was meant for. */
export interface EntryProblem {
  readonly problem: Problem;
  readonly cell?: Cell;
}

/**
 * Enters what was typed with `--given`. Mutates the frame. A given that the sheet carries from
 * another is entered there, so that both sheets see it.
 *
 * @returns what could not be entered, in the order of typing; its place is the option and the column
 *   in the entry
 */
export function enterGivens(
  book: Book,
  frame: Frame,
  sheet: string,
  givens: readonly GivenArgument[],
): readonly EntryProblem[] {
  return givens.flatMap((given, i) => {
    const first = givens.findIndex(({ name }) => name === given.name);
    const problem =
      first < i
        ? fail('entered-twice', WHOLE, { name: given.name })
        : enterOne(book, frame, sheet, given);
    return problem === undefined ? [] : [describe(book, sheet, given, problem)];
  });
}

const WHOLE = { from: 0, to: 0 };

function enterOne(
  book: Book,
  frame: Frame,
  sheet: string,
  { name, entry }: GivenArgument,
): Problem | undefined {
  const cell = originOf(book, book.find(sheet, name));
  if (cell === undefined) {
    const near = nearestGivens(name, listGivens(book, sheet));
    return fail('unknown-given', WHOLE, { name, sheet, near });
  }
  if (cell.role !== 'given') return fail('entered-result', WHOLE, { name, sheet: cell.sheet });
  const reading = enterGiven(book, frame, cell.index, { text: entry });
  return reading.state === 'failed' ? reading.problem : undefined;
}

/** Names that are mistyped, else those of which one word is: `rollout` is near measured_rollout. */
export function nearestGivens(name: string, names: readonly string[]): readonly string[] {
  const near = nearest(name, names);
  if (near.length > 0) return near;
  const words = new Set(
    nearest(
      name,
      names.flatMap((each) => each.split('_')),
    ),
  );
  return names.filter((each) => each.split('_').some((word) => words.has(word)));
}

/** Names that a person may enter on this sheet. */
export function listGivens(book: Book, sheet: string): readonly string[] {
  const cells = book.cellsOf(sheet);
  return cells.filter((cell) => originOf(book, cell)?.role === 'given').map(({ name }) => name);
}

function describe(
  book: Book,
  sheet: string,
  { name }: GivenArgument,
  problem: Problem,
): EntryProblem {
  const cell = originOf(book, book.find(sheet, name));
  const place = { file: `--given ${name}`, line: 1, column: problem.from + 1 };
  const placed = { ...problem, place, cell: name };
  return cell === undefined ? { problem: placed } : { problem: placed, cell };
}
