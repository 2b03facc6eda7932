import type { System } from '../../units/unit.ts';
import type { Book } from '../book.ts';
import type { Cell } from '../cell.ts';
import type { Frame } from '../frame.ts';
import type { Outcome } from '../outcome.ts';
import { showValue } from '../show.ts';
import { outcomeOf } from '../solve.ts';
import { describeDifference } from './difference-words.ts';

/** One result in every column. */
export interface Compared {
  readonly cell: Cell;
  readonly columns: readonly ComparedValue[];
  /** True where the columns do not all say the same. */
  readonly differs: boolean;
}

export interface ComparedValue {
  /** Undefined where the column itself could not be worked. */
  readonly outcome: Outcome | undefined;
  /** As people read it, or why there is none. */
  readonly text: string;
  /** Against the first column, in sign and words; undefined there, and where one has no value. */
  readonly difference: string | undefined;
}

/**
 * Sets results of several frames of one book side by side.
 *
 * @param frames worked; undefined for a column that has none
 */
export function compareResults(
  book: Book,
  frames: readonly (Frame | undefined)[],
  results: readonly number[],
  system?: System,
): readonly Compared[] {
  return results.map((index) => {
    const cell = book.cells[index]!;
    const outcomes = frames.map((frame) => frame && outcomeOf(book, frame, index));
    const columns = outcomes.map((outcome, i) => ({
      outcome,
      text: textOf(outcome, cell, system),
      difference: i === 0 ? undefined : differenceOf(outcomes[0], outcome, cell, system),
    }));
    const differs = columns.some(({ text }) => text !== columns[0]!.text);
    return { cell, columns, differs };
  });
}

function textOf(outcome: Outcome | undefined, cell: Cell, system: System | undefined): string {
  if (outcome === undefined) return 'not worked';
  if (outcome.state === 'blank') return 'blank';
  if (outcome.state !== 'value') return outcome.problem.message;
  return cell.kind === undefined
    ? ''
    : showValue(outcome.value, cell.kind, cell.display, system).text;
}

function differenceOf(
  first: Outcome | undefined,
  own: Outcome | undefined,
  cell: Cell,
  system: System | undefined,
): string | undefined {
  if (first?.state !== 'value' || own?.state !== 'value') return undefined;
  return describeDifference(first.value, own.value, cell, system);
}
