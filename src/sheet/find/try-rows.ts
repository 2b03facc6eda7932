import type { Book } from '../book.ts';
import type { Cell, GivenCell } from '../cell.ts';
import { enterGiven, rowsOf } from '../enter.ts';
import { copyFrame, type Frame } from '../frame.ts';
import { pathBetween } from '../probe.ts';
import { solve } from '../solve.ts';

/** A row of a table and what it would make of a result. */
export interface TriedRow {
  readonly row: string;
  /** SI; NaN where there is none. */
  readonly result: number;
}

/**
 * Picks each row of a given's table in turn and works the result, the nearest to the target first.
 * None where the given is not picked from a table.
 */
export function tryRows(
  book: Book,
  frame: Frame,
  given: GivenCell,
  result: Cell,
  target: number,
  element = 0,
): readonly TriedRow[] {
  const scratch = copyFrame(frame);
  const path = pathBetween(book, [given.index], [result.index]);
  const tried = rowsOf(book, given).map(({ key }) => {
    enterGiven(book, scratch, given.index, { text: key });
    solve(book, scratch, path);
    return { row: key, result: numberIn(scratch, result, element) };
  });
  const off = ({ result: number }: TriedRow) =>
    Number.isFinite(number) ? Math.abs(number - target) : Number.MAX_VALUE;
  return tried.sort((a, b) => off(a) - off(b));
}

function numberIn({ memory }: Frame, { index, kind }: Cell, element: number): number {
  if (kind?.type !== 'list') return memory.numbers[index]!;
  return (memory.others[index] as Float64Array | undefined)?.[element] ?? Number.NaN;
}
