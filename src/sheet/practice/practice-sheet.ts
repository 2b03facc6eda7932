import type { System } from '../../units/unit.ts';
import type { Book } from '../book.ts';
import type { Cell, Practice } from '../cell.ts';
import type { Frame } from '../frame.ts';
import { showValue } from '../show.ts';
import { drawProblem, type PracticeProblem } from './draw-problem.ts';

/** A practice sheet: problems in a row. The same seed gives the same sheet to a whole class. */
export interface PracticeSheet {
  readonly seed: number;
  readonly problems: readonly SheetProblem[];
}

/** One problem, in words. */
export interface SheetProblem {
  readonly practice: Practice;
  readonly problem: PracticeProblem;
  readonly title: string;
  readonly question: string;
  readonly numbers: readonly PrintedNumber[];
  /** The result that is asked for. */
  readonly asked: Cell;
  readonly answer: string;
  /** How far off is still right: `± 0.001 in`. */
  readonly within: string;
}

export interface PrintedNumber {
  readonly name: string;
  readonly label: string;
  readonly text: string;
}

/**
 * Draws problems of a sheet's practice questions, taking the questions in turn until there are as many
 * as wanted. The first question has the seed itself, so that it is the one that the page deals for it.
 *
 * @returns fewer where a question has no numbers with an answer; none where the sheet asks nothing
 */
export function drawSheet(
  book: Book,
  frame: Frame,
  sheet: string,
  {
    seed,
    count,
    system,
  }: { readonly seed: number; readonly count: number; readonly system?: System },
): PracticeSheet {
  const practices = book.practices.filter((each) => each.sheet === sheet && each.linked);
  const places = practices.length === 0 ? [] : Array.from({ length: count }, (_, i) => i);
  const problems = places.flatMap((place) => {
    const practice = practices[place % practices.length]!;
    const round = Math.floor(place / practices.length);
    const problem = drawProblem(book, frame, practice.linked!, seed + round);
    return problem === undefined ? [] : [describe(book, practice, problem, system)];
  });
  return { seed, problems };
}

function describe(
  book: Book,
  practice: Practice,
  problem: PracticeProblem,
  system: System | undefined,
): SheetProblem {
  const asked = book.cells[practice.linked!.asked]!;
  const show = (value: number, { kind, display }: Cell) =>
    showValue(value, kind!, display, system).text;
  const { title, question } = practice.statement;
  return {
    practice,
    problem,
    title,
    question,
    numbers: problem.numbers.map(({ given, value }) => {
      const cell = book.cells[given]!;
      return { name: cell.name, label: cell.label, text: showDealt(value, cell, system) };
    }),
    asked,
    answer: show(problem.answer, asked),
    within: `± ${show(problem.within, asked)}`,
  };
}

/** A dealt number, as its field would show it: a metric thread stays metric on an inch-pound page. */
export function showDealt(
  value: number,
  { kind, display }: Cell,
  system: System | undefined,
): string {
  return showValue(value, kind!, display, system === 'metric' ? system : undefined).text;
}

/** Any text gives a seed, so that a class can use a word; a whole number gives itself. */
export function readSeed(text: string): number {
  const number = Number(text.trim());
  if (text.trim() !== '' && Number.isSafeInteger(number)) return Math.abs(number);
  return [...text].reduce((sum, c) => (sum * 31 + c.codePointAt(0)!) % 1_000_003, 7);
}
