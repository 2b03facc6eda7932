import type { Book } from '../book.ts';
import type { Frame } from '../frame.ts';
import { createProbe } from '../probe.ts';
import { studentT } from './student-t.ts';
import { type Doubt, listDoubts } from './uncertain-inputs.ts';
import { type Limits, type WorstCase, worstCase } from './worst-case.ts';

/** How sure one number of a result is. All in SI. */
export interface Spread {
  readonly value: number;
  readonly worst: WorstCase;
  readonly likely: Likely;
  /** Whose doubt it is, largest share first. */
  readonly shares: readonly Share[];
  /**
   * False where the result bends or jumps within the doubt, so that the likely range, which takes it
   * for straight, is not to be relied on; a simulation is.
   */
  readonly straight: boolean;
}

/** The range in which the result lies with a confidence of 95 %, by the law of propagation. */
export interface Likely {
  readonly from: number;
  readonly to: number;
  /** Combined standard uncertainty. */
  readonly u: number;
  /** Effective degrees of freedom (Welch and Satterthwaite). */
  readonly dof: number;
}

export interface Share {
  readonly cell: number;
  /** Part of the variance of the result, 0 to 1. */
  readonly share: number;
  /** What this given alone contributes: sensitivity times standard uncertainty, with its sign. */
  readonly effect: number;
}

const CONFIDENCE = 0.95;

/**
 * How sure a result is: each doubted given is moved by its standard uncertainty and the sheet worked
 * again, so that what appears twice cancels.
 *
 * @param doubts those of the readings, unless others are to be taken
 * @returns one entry a number of the result, several for a list; none where it has no value or
 *   nothing that it hangs on is in doubt, or the doubt does not reach it
 * Source: JCGM 100 (GUM) 5.1.3 note 2 (numerical sensitivities), equations 10 and G.2b.
 */
export function spreadOf(
  book: Book,
  frame: Frame,
  result: number,
  doubts: readonly Doubt[] = listDoubts(book, frame, result),
): readonly Spread[] {
  if (doubts.length === 0) return [];
  const cells = [...new Set(doubts.map(({ cell }) => cell))];
  const nominal = cells.map((cell) => frame.memory.numbers[cell]!);
  const probe = createProbe(book, frame, cells, [result]);
  const values = probe.at(nominal);
  if (!values.every(Number.isFinite)) return [];
  const effects = doubts.map((doubt) => effectsOf(doubt, cells, nominal, values, probe.at));
  // The numbers of a list are all worked at once, so each place is worked for all of them.
  const at = values.length > 1 ? remember(probe.at) : probe.at;
  const box = cells.map((cell, i) => limitsOf(cell, nominal[i]!, doubts));
  let isReached = false;
  const spreads = values.map((value, k) => {
    const own = effects.map((effect) => effect[k]!);
    const worst = worstCase((place) => at(place)[k] ?? Number.NaN, box);
    const likely = withinWorst(combine(value, doubts, own), worst, doubts, own);
    isReached ||= isInDoubt(worst, own);
    return {
      value,
      worst,
      likely,
      shares: shareOut(doubts, own),
      straight: isStraight(own, likely, worst),
    };
  });
  return isReached ? spreads : [];
}

function remember(
  at: (values: readonly number[]) => readonly number[],
): (values: readonly number[]) => readonly number[] {
  const known = new Map<string, readonly number[]>();
  return (values) => {
    const key = values.join();
    const found = known.get(key) ?? at(values);
    known.set(key, found);
    return found;
  };
}

/** Less than this share of a result is what rounding leaves of terms that cancel. */
const ROUNDING = 1e-12;

function noiseOf({ from, to }: WorstCase): number {
  return ROUNDING * Math.max(Math.abs(from), Math.abs(to));
}

/** False where what is in doubt does not matter: the larger of two, the far side of a limit. */
function isInDoubt(worst: WorstCase, effects: readonly Effect[]): boolean {
  const moves = effects.flatMap(({ size, bend }) => [Math.abs(size), Math.abs(bend)]);
  return [worst.to - worst.from, ...moves].some((move) => move > noiseOf(worst));
}

interface Effect {
  /** Half the change from one standard uncertainty below to one above. */
  readonly size: number;
  /** Change of the result by the shift of the middle of the distribution. */
  readonly shift: number;
  /** How far the result lies off the straight line between the two. */
  readonly bend: number;
}

/** Off the straight by more than this share of the change, the law of propagation is not to be relied on. */
const MOST_BEND = 0.1;

function isStraight(effects: readonly Effect[], { u }: Likely, worst: WorstCase): boolean {
  const noise = noiseOf(worst);
  // A jump between the places tried leaves no slope at all.
  if (u === 0 && worst.to - worst.from > noise) return false;
  return effects.every(({ bend }) => Math.abs(bend) <= Math.max(noise, MOST_BEND * u));
}

/** For each number of the result, what one doubt does to it. A side without a value leaves the other. */
function effectsOf(
  { cell, u, shift }: Doubt,
  cells: readonly number[],
  nominal: readonly number[],
  here: readonly number[],
  at: (values: readonly number[]) => readonly number[],
): readonly Effect[] {
  const i = cells.indexOf(cell);
  const above = at(nominal.with(i, nominal[i]! + u));
  const below = at(nominal.with(i, nominal[i]! - u));
  return here.map((y, k) => {
    const [up, down] = [above[k] ?? Number.NaN, below[k] ?? Number.NaN];
    const size = Number.isNaN(up) ? y - down : Number.isNaN(down) ? up - y : (up - down) / 2;
    const bend = Number.isNaN(up + down) ? Number.POSITIVE_INFINITY : (up + down) / 2 - y;
    return { size, shift: (size / u) * shift, bend };
  });
}

function limitsOf(cell: number, value: number, doubts: readonly Doubt[]): Limits {
  const own = doubts.filter((doubt) => doubt.cell === cell);
  const low = own.reduce((x, { minus }) => x - minus, value);
  return { value, low, high: own.reduce((x, { plus }) => x + plus, value) };
}

function combine(value: number, doubts: readonly Doubt[], effects: readonly Effect[]): Likely {
  const variance = effects.reduce((sum, { size }) => sum + size ** 2, 0);
  const u = Math.sqrt(variance);
  const spreadOut = effects.reduce((sum, { size }, i) => sum + size ** 4 / doubts[i]!.dof, 0);
  const dof = spreadOut > 0 ? variance ** 2 / spreadOut : Number.POSITIVE_INFINITY;
  const middle = effects.reduce((sum, { shift }) => sum + shift, value);
  const reach = u === 0 ? 0 : studentT(CONFIDENCE, dof) * u;
  return { from: middle - reach, to: middle + reach, u, dof };
}

/** Limits are limits: where nothing but tolerances reaches the result, nothing likely lies beyond them all. */
function withinWorst(
  likely: Likely,
  worst: WorstCase,
  doubts: readonly Doubt[],
  effects: readonly Effect[],
): Likely {
  const reaches = (i: number) => Math.abs(effects[i]!.size) > noiseOf(worst);
  if (doubts.some(({ shape }, i) => shape !== 'rectangular' && reaches(i))) return likely;
  return {
    ...likely,
    from: Math.max(likely.from, worst.from),
    to: Math.min(likely.to, worst.to),
  };
}

function shareOut(doubts: readonly Doubt[], effects: readonly Effect[]): readonly Share[] {
  const variance = effects.reduce((sum, { size }) => sum + size ** 2, 0);
  const byCell = new Map<number, { variance: number; effect: number }>();
  for (const [i, { cell }] of doubts.entries()) {
    const { size } = effects[i]!;
    const before = byCell.get(cell)?.variance ?? 0;
    const total = before + size ** 2;
    byCell.set(cell, { variance: total, effect: Math.sign(size) * Math.sqrt(total) });
  }
  return [...byCell]
    .map(([cell, own]) => ({
      cell,
      share: variance === 0 ? 0 : own.variance / variance,
      effect: own.effect,
    }))
    .sort((a, b) => b.share - a.share || a.cell - b.cell);
}
