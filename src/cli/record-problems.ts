import type { Problem } from '../language/problem.ts';
import type { Book } from '../sheet/book.ts';
import type { Cell } from '../sheet/cell.ts';
import type { Frame } from '../sheet/frame.ts';
import { outcomeOf } from '../sheet/solve.ts';
import type { EntryProblem } from './enter-givens.ts';
import { type ProblemRecord, recordProblem, uniqueProblems } from './problem-record.ts';

/**
 * All that stands between a sheet and its results: entries that were refused, what is wrong with the
 * sheets, values that failed and those that wait for them. A value that merely waits for a reading
 * that was left blank is no problem.
 */
export function recordProblems(
  book: Book,
  frame: Frame,
  sheet: string,
  entries: readonly EntryProblem[],
): readonly ProblemRecord[] {
  const refused = new Set(entries.flatMap(({ cell }) => (cell === undefined ? [] : [cell.index])));
  const cells = listHurt(book, frame, sheet).filter(({ index }) => !refused.has(index));
  const records = [
    ...entries.map(({ problem }) => recordProblem(problem)),
    ...book.problems.map((problem) => recordProblem(problem)),
    ...cells.map((cell) => recordOutcome(book, frame, sheet, cell)),
  ];
  // A fault of a sheet is found in the reading and again at the cell that it bars.
  return uniqueProblems(records);
}

function recordOutcome(book: Book, frame: Frame, sheet: string, cell: Cell): ProblemRecord {
  const outcome = outcomeOf(book, frame, cell.index) as { readonly problem: Problem };
  const placed = { place: cell.place, ...outcome.problem };
  return recordProblem(placed, cell.sheet === sheet ? cell.name : cell.id);
}

/** Cells without a value because something failed: those of the sheet and those they lean on. */
function listHurt(book: Book, frame: Frame, sheet: string): readonly Cell[] {
  const needed = new Set(book.cellsOf(sheet).map(({ index }) => index));
  for (const index of needed) for (const input of book.cells[index]!.inputs) needed.add(input);
  const hurt = new Set<number>();
  for (const index of orderAll(book)) {
    if (isHurt(book, frame, index, hurt)) hurt.add(index);
  }
  return book.cells.filter(({ index }) => needed.has(index) && hurt.has(index));
}

/** Cells in a loop first: they are in no order and have failed for certain. */
function orderAll(book: Book): readonly number[] {
  const ordered = new Set(book.order);
  return [...book.cells.map(({ index }) => index).filter((i) => !ordered.has(i)), ...book.order];
}

function isHurt(book: Book, frame: Frame, index: number, hurt: ReadonlySet<number>): boolean {
  const { state } = outcomeOf(book, frame, index);
  if (state === 'failed') return true;
  return state === 'waiting' && book.cells[index]!.inputs.some((input) => hurt.has(input));
}
