import { randomLcg } from 'd3-random';
import type { Book } from '../book.ts';
import type { LinkedPractice, LinkedVary } from '../cell.ts';
import { copyFrame, type Frame } from '../frame.ts';
import { pathBetween } from '../probe.ts';
import { solve } from '../solve.ts';

/** A practice question with its numbers. The same seed gives the same numbers to a whole class. */
export interface PracticeProblem {
  readonly seed: number;
  /** What the apprentice is told. SI. */
  readonly numbers: readonly { readonly given: number; readonly value: number }[];
  /** SI. */
  readonly answer: number;
  readonly within: number;
  /** What each of the sheet's mistakes leads to with these numbers; NaN where it leads nowhere. */
  readonly mistakes: readonly number[];
  /** The sheet with these numbers, for the working afterwards. */
  readonly frame: Frame;
}

/** Draws that are tried before a question is given up: numbers without an answer, or on which a mistake would not show. */
const TRIES = 200;
/** Steps in a range whose given names no resolution. */
const STEPS = 40;

/**
 * Draws fresh numbers from the ranges of the givens, on their resolution, so that there is an answer and
 * no usual mistake happens to give the right one.
 *
 * @returns undefined where no draw has an answer
 */
export function drawProblem(
  book: Book,
  frame: Frame,
  practice: LinkedPractice,
  seed: number,
): PracticeProblem | undefined {
  const random = randomLcg(scatter(seed));
  const givens = practice.vary.map(({ given }) => given);
  const path = pathBetween(
    book,
    givens,
    book.cells.map(({ index }) => index),
  );
  let spare: PracticeProblem | undefined;
  for (let i = 0; i < TRIES; i += 1) {
    const problem = tryNumbers(book, frame, practice, path, seed, random);
    if (problem === undefined) continue;
    if (isTelling(problem)) return problem;
    spare ??= problem;
  }
  return spare;
}

/**
 * Neighbouring seeds start the generator far apart; as they are, its first numbers would hardly differ. A
 * product alone does not do it, since the generator's own first step is one, too.
 *
 * Source: Appleby, MurmurHash3, the 32-bit finaliser.
 */
function scatter(seed: number): number {
  const once = Math.imul(seed ^ (seed >>> 16), 0x85ebca6b);
  const twice = Math.imul(once ^ (once >>> 13), 0xc2b2ae35);
  return ((twice ^ (twice >>> 16)) >>> 0) / 2 ** 32;
}

function tryNumbers(
  book: Book,
  frame: Frame,
  { vary, asked, within, mistakes }: LinkedPractice,
  path: readonly number[],
  seed: number,
  random: () => number,
): PracticeProblem | undefined {
  const fresh = copyFrame(frame);
  const numbers = vary.map((line) => ({ given: line.given, value: drawNumber(line, random) }));
  for (const { given, value } of numbers) {
    fresh.memory.numbers[given] = value;
    fresh.memory.blanks[given] = 0;
    fresh.readings[given] = { state: 'value', value, explicit: false };
  }
  solve(book, fresh, path);
  const answer = fresh.memory.numbers[asked]!;
  const reach = within.code.run(fresh.memory) as number;
  if (!Number.isFinite(answer) || !(reach > 0)) return undefined;
  const wrong = mistakes.map(({ formula }) => formula.code.run(fresh.memory) as number);
  return { seed, numbers, answer, within: reach, mistakes: wrong, frame: fresh };
}

/** What is dealt can be read off as it is shown: it counts in steps from 0, not from an end that lies between two. */
function drawNumber({ from, to, step }: LinkedVary, random: () => number): number {
  const width = step ?? (to - from) / STEPS;
  const first = step === undefined ? from : Math.ceil(from / step - 1e-9) * step;
  const steps = Math.floor((to - first) / width + 1e-9);
  return steps < 0 ? from : first + width * Math.floor(random() * (steps + 1));
}

/** Each mistake leads somewhere else than the answer, the sign turned round included. */
function isTelling({ answer, within, mistakes }: PracticeProblem): boolean {
  return (
    Math.abs(answer) > within &&
    mistakes.every((wrong) => Number.isNaN(wrong) || Math.abs(wrong - answer) > 2 * within)
  );
}
