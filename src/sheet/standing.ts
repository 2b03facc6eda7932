import type { Value } from '../language/kind.ts';
import type { System } from '../units/unit.ts';
import type { Book } from './book.ts';
import type { Formula, GivenCell } from './cell.ts';
import type { Frame } from './frame.ts';
import type { Outcome } from './outcome.ts';
import { outcomeOf } from './solve.ts';
import { type Spread, spreadOf } from './spread/spread.ts';

/** A book as it stands, worked: what drawings and tables take their values from. */
export interface Standing {
  readonly book: Book;
  frame(): Frame;
  /** The units that values are shown in; undefined for the sheet's own. */
  system(): System | undefined;
  outcomeOf(cell: number): Outcome;
  /** The value of a formula; NaN or undefined where it has none. */
  workOut(formula: Formula): Value | undefined;
  /** How sure a result is; one entry a number of it, none where nothing is in doubt. */
  spreadOf(cell: number): readonly Spread[];
  /** True where a person typed the given; false while the sheet's own example stands. */
  isEntered(cell: GivenCell): boolean;
}

export interface StandingOptions {
  readonly system?: System;
  isEntered(cell: GivenCell): boolean;
}

/** A worked frame as it stands. */
export function createStanding(
  book: Book,
  frame: Frame,
  { system, isEntered }: StandingOptions,
): Standing {
  return {
    book,
    frame: () => frame,
    system: () => system,
    outcomeOf: (cell) => outcomeOf(book, frame, cell),
    workOut: ({ code }) => code.run(frame.memory) as Value | undefined,
    spreadOf: (cell) => spreadOf(book, frame, cell),
    isEntered,
  };
}
