import type { Attempt, Caption, Job } from '../job/record.ts';
import type { Value } from '../language/kind.ts';
import type { Book } from '../sheet/book.ts';
import type { Cell, Check, Formula, GivenCell } from '../sheet/cell.ts';
import type { Frame } from '../sheet/frame.ts';
import type { Outcome } from '../sheet/outcome.ts';
import type { Entry, Reading } from '../sheet/reading.ts';
import type { Step } from '../sheet/sheet.ts';
import type { Spread } from '../sheet/spread/spread.ts';
import type { Verdict } from '../sheet/verdict.ts';
import type { System } from '../units/unit.ts';
import type { SimulationSize, SimulationWatch } from './run-simulation.ts';

/** What the blocks of a sheet ask of the page, and tell it. */
export interface Desk {
  readonly book: Book;
  /** The values as they stand, for what works the sheet again: questions asked backwards, spread. */
  frame(): Frame;
  job(): Job;
  system(): System;
  outcomeOf(cell: number): Outcome;
  readingOf(cell: GivenCell): Reading;
  verdictOf(check: Check): Verdict;
  /** Why a number that was worked out is not to be trusted. */
  warningsOf(cell: number): readonly string[];
  /** What tells how sure results are; it comes a moment after the results. */
  doubt(): Doubt | undefined;
  /** How sure a result is; one entry a number of it, none where nothing is in doubt. */
  spreadOf(cell: number): readonly Spread[];
  /** Starts a simulation and gives what stops it. */
  simulate(cell: number, options: SimulationSize, watch: SimulationWatch): () => void;
  /** The value of a formula as the cells stand; NaN or undefined where it has none. */
  workOut(formula: Formula): Value | undefined;
  /** What the person typed; undefined while the sheet's own example stands. */
  entryOf(cell: GivenCell): Entry | undefined;
  /** Takes an entry in. Entries with the same mark, one after another, are undone together. */
  enter(cell: GivenCell, entry: Entry, mark?: string): void;
  /** The value of a cell in another frame than the page's own. */
  valueIn(frame: Frame, cell: Cell): Value | undefined;
  /** Milliseconds on some clock. */
  now(): number;
  /** Puts another job in place of this one, as one step that can be undone. */
  replace(label: string, job: Job): void;
  /** Keeps an answer to a practice question with the job, for the instructor. */
  recordAttempt(sheet: string, question: string, attempt: Attempt): void;
  /** The day on which a step was ticked off. */
  dayOf(sheet: string, step: Step): string | undefined;
  tick(sheet: string, step: Step, done: boolean): void;
  /** Who ticked a step off, where that is known. */
  signerOf(sheet: string, step: Step): string | undefined;
  /** Who signs the steps that are ticked from now on. */
  worker(): string;
  setWorker(name: string): void;
  noteOn(sheet: string, block: string): string;
  setNote(sheet: string, block: string, text: string): void;
  /** Words of one's own under a figure, in place of those made from its data. */
  captionOn(sheet: string, figure: string): Caption;
  setCaption(sheet: string, figure: string, words: Caption): void;
}

/** How sure results are, and how that is shown. */
export interface Doubt {
  spreadOf(book: Book, frame: Frame, cell: number): readonly Spread[];
  /** One line for under a result, with more behind it; undefined where nothing is in doubt. */
  createSpreadLine(desk: Desk, cell: Cell): HTMLElement | undefined;
  /** What a verdict says when the doubt of the readings is taken into account. */
  describeVerdictUnderDoubt(verdict: Verdict, spreads: readonly Spread[]): string | undefined;
}

/** The cell of this name on this sheet, if it has one. */
export function findCell(desk: Desk, sheet: string, name: string): Cell | undefined {
  return desk.book.find(sheet, name);
}
