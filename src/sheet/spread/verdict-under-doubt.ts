import type { Verdict } from '../verdict.ts';
import type { Spread } from './spread.ts';
import { coverage } from './student-t.ts';

/** What a check says when the doubt of the readings is taken into account. */
export interface Confidence {
  /**
   * `surely-pass` and `surely-fail`: whatever the readings are within their tolerance; `likely-…`:
   * with a probability of 95 % or more; `cannot-tell`: this measuring does not settle it.
   */
  readonly verdict: 'surely-pass' | 'likely-pass' | 'cannot-tell' | 'likely-fail' | 'surely-fail';
  /** Probability of lying inside the window, 0 to 1; NaN where the likely range is not known. */
  readonly inside: number;
}

const LIKELY = 0.95;

/**
 * Judges a window under doubt. A list passes only as a whole: its least sure element decides. Of two or
 * three readings the furthest is no limit: where the likely range is the wider one, it has to agree.
 *
 * @param spreads one a number of the checked value
 */
export function judgeUnderDoubt(
  verdict: Verdict,
  spreads: readonly Spread[],
): Confidence | undefined {
  if (verdict.verdict === 'unknown' || spreads.length === 0) return undefined;
  const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY } = verdict;
  // That a reading in doubt is exactly one value has no probability.
  if (least === most) return undefined;
  const judged = spreads.map((spread) => judgeOne(spread, least, most));
  return judged.reduce((a, b) => (isLessSure(b, a) ? b : a));
}

function isLessSure(a: Confidence, b: Confidence): boolean {
  const steps = ORDER.indexOf(a.verdict) - ORDER.indexOf(b.verdict);
  return steps > 0 || (steps === 0 && a.inside < b.inside);
}

const ORDER: readonly Confidence['verdict'][] = [
  'surely-pass',
  'likely-pass',
  'cannot-tell',
  'likely-fail',
  'surely-fail',
];

function judgeOne({ worst, likely, straight }: Spread, least: number, most: number): Confidence {
  const unknown: Confidence = { verdict: 'cannot-tell', inside: Number.NaN };
  if (worst.gap) return unknown;
  const slack = 1e-12 * Math.max(Math.abs(worst.from), Math.abs(worst.to));
  const isIn = worst.from >= least - slack && worst.to <= most + slack;
  const isOut = worst.to < least || worst.from > most;
  const isWider = straight && (likely.from < worst.from - slack || likely.to > worst.to + slack);
  if (!isWider && isIn) return { verdict: 'surely-pass', inside: 1 };
  if (!isWider && isOut) return { verdict: 'surely-fail', inside: 0 };
  if (!straight) return unknown;
  const middle = (likely.from + likely.to) / 2;
  const below = (limit: number) => probabilityBelow(limit - middle, likely.u, likely.dof);
  const inside = Math.max(0, below(most) - below(least));
  if (inside >= LIKELY) return { verdict: isIn ? 'surely-pass' : 'likely-pass', inside };
  if (inside > 1 - LIKELY) return { verdict: 'cannot-tell', inside };
  return { verdict: isOut ? 'surely-fail' : 'likely-fail', inside };
}

function probabilityBelow(distance: number, u: number, dof: number): number {
  if (u === 0 || !Number.isFinite(distance)) return distance >= 0 ? 1 : 0;
  const within = coverage(Math.abs(distance) / u, dof);
  return distance >= 0 ? (1 + within) / 2 : (1 - within) / 2;
}
