import type { Memory } from '../../language/memory.ts';
import { namesIn } from '../../language/walk.ts';
import type { Book } from '../book.ts';
import type { Formula, GivenCell, LinkedFind } from '../cell.ts';
import type { Frame } from '../frame.ts';
import { createProbe } from '../probe.ts';
import { upstreamOf } from '../upstream.ts';
import { findRoots, type Root } from './find-roots.ts';

/** The answer to "which given makes the result equal the target?". All in SI. */
export interface Found {
  /** As the given stands now; undefined where the target itself has no value. */
  readonly target: number | undefined;
  /** True where the target hangs on the given too, and is another at each place. */
  readonly moves: boolean;
  readonly from: number;
  readonly to: number;
  /** Every value of the given that meets the target, in rising order; a stretch where it does throughout has two ends. */
  readonly solutions: readonly Root[];
  /** Where the result comes nearest to the target, and what it is there. */
  readonly closest: Tried | undefined;
  /** False where the result does not hang on the given at all, or is the same everywhere. */
  readonly depends: boolean;
  /** Sizes in stock with the result that each gives, the nearest to the target first. */
  readonly stocked: readonly Tried[];
}

export interface Tried {
  readonly given: number;
  readonly result: number;
  /** What the target is there. */
  readonly target: number;
}

/** A question put together at the page or the terminal rather than in a sheet. */
export interface Question {
  readonly sheet: string;
  readonly given: number;
  readonly result: Formula;
  /** A number, or a formula, which may hang on the given as well. */
  readonly target: number | Formula;
  readonly from: number;
  readonly to: number;
  readonly near?: readonly number[];
}

/** Answers a `find` of a sheet on the values as they stand; undefined where its range has no value. */
export function answerFind(
  book: Book,
  frame: Frame,
  sheet: string,
  find: LinkedFind,
): Found | undefined {
  const number = (formula: Formula) => formula.code.run(frame.memory) as number;
  const given = book.cells[find.given] as GivenCell;
  const from = find.from === undefined ? given.range!.from : number(find.from);
  const to = find.to === undefined ? given.range!.to : number(find.to);
  if (!Number.isFinite(from + to)) return undefined;
  const near = find.near?.code.run(frame.memory) as Float64Array | undefined;
  const question = {
    sheet,
    given: find.given,
    result: find.result,
    target: find.target,
    from,
    to,
  };
  return findGiven(
    book,
    frame,
    near === undefined ? question : { ...question, near: Array.from(near) },
  );
}

/** Searches a range of one given for all values that make a result equal to a target. */
export function findGiven(book: Book, frame: Frame, question: Question): Found {
  const { from, to, near = [] } = question;
  const { tried, hangs, moves } = createTrial(book, frame, question);
  const present = targetIn(question.target, frame.memory);
  const target = Number.isNaN(present) ? undefined : present;
  const [low, high] = from < to ? [from, to] : [to, from];
  const base = { target, moves, from: low, to: high };
  if (target === undefined && !moves) {
    return { ...base, solutions: [], closest: undefined, depends: true, stocked: [] };
  }
  const sizes = [tried(low), tried(high)].flatMap((one) => [one.result, one.target]);
  const scale = sizes.reduce((most, size) => Math.max(most, Math.abs(size) || 0), 0);
  const { roots, closest, varies } = findRoots((x) => missBy(tried(x)), low, high, scale || 1);
  const depends = hangs && (varies || moves);
  const stocked = near.map(tried).filter((one) => Number.isFinite(missBy(one)));
  return {
    ...base,
    solutions: depends ? roots : [],
    closest: closest && tried(closest.x),
    depends,
    stocked: stocked.sort((a, b) => Math.abs(missBy(a)) - Math.abs(missBy(b))),
  };
}

function missBy({ result, target }: Tried): number {
  return result - target;
}

function targetIn(target: Question['target'], memory: Memory): number {
  return typeof target === 'number' ? target : (target.code.run(memory) as number);
}

/** The sheet worked with other values for the given, and whether result and target hang on it at all. */
function createTrial(book: Book, frame: Frame, { sheet, given, result, target }: Question) {
  const cellsOf = ({ tree }: Formula) =>
    namesIn(tree).flatMap((name) => book.find(sheet, name)?.index ?? []);
  const isReached = (cells: readonly number[]) => upstreamOf(book.cells, cells).has(given);
  const needs = cellsOf(result);
  const aims = typeof target === 'number' ? [] : cellsOf(target);
  const probe = createProbe(book, frame, [given], [...needs, ...aims]);
  const moves = isReached(aims);
  return {
    hangs: moves || isReached(needs),
    moves,
    tried(x: number): Tried {
      const memory = probe.memoryAt([x]);
      return {
        given: x,
        result: result.code.run(memory) as number,
        target: targetIn(target, memory),
      };
    },
  };
}
