import { namesIn } from '../../language/walk.ts';
import type { Book } from '../book.ts';
import type { Formula, GivenCell, LinkedFind } from '../cell.ts';
import type { Frame } from '../frame.ts';
import { createProbe } from '../probe.ts';
import { upstreamOf } from '../upstream.ts';
import { findRoots, type Root } from './find-roots.ts';

/** The answer to "which given makes the result equal the target?". All in SI. */
export interface Found {
  /** Undefined where the target itself has no value. */
  readonly target: number | undefined;
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
}

/** A question put together at the page or the terminal rather than in a sheet. */
export interface Question {
  readonly sheet: string;
  readonly given: number;
  readonly result: Formula;
  readonly target: number;
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
    target: number(find.target),
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
  const { given, result, target, from, to, near = [] } = question;
  const needs = namesIn(result.tree).flatMap(
    (name) => book.find(question.sheet, name)?.index ?? [],
  );
  const probe = createProbe(book, frame, [given], needs);
  const at = (x: number) => result.code.run(probe.memoryAt([x])) as number;
  const tried = (x: number): Tried => ({ given: x, result: at(x) });
  const hangs = needs.includes(given) || upstreamOf(book.cells, needs).has(given);
  if (Number.isNaN(target)) return empty(undefined, from, to);
  const [low, high] = from < to ? [from, to] : [to, from];
  const scale = Math.max(Math.abs(target), Math.abs(at(low)) || 0, Math.abs(at(high)) || 0);
  const { roots, closest, varies } = findRoots((x) => at(x) - target, low, high, scale || 1);
  const stocked = near.map(tried).filter((one) => Number.isFinite(one.result));
  return {
    target,
    from: low,
    to: high,
    solutions: hangs && varies ? roots : [],
    closest: closest && tried(closest.x),
    depends: hangs && varies,
    stocked: stocked.sort((a, b) => Math.abs(a.result - target) - Math.abs(b.result - target)),
  };
}

function empty(target: number | undefined, from: number, to: number): Found {
  return { target, from, to, solutions: [], closest: undefined, depends: true, stocked: [] };
}
