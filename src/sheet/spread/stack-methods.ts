import type { Book } from '../book.ts';
import type { Frame } from '../frame.ts';
import { describeSamples } from './distribution.ts';
import { runSimulation } from './simulate.ts';
import { spreadOf } from './spread.ts';

/** Between which values a stack lies, by one of the ways in which tolerances are added up. SI. */
export interface StackMethod {
  readonly method: 'worst' | 'squares' | 'simulated';
  readonly from: number;
  readonly to: number;
}

/** Enough for two figures, few enough not to be waited for. */
export const STACK_SAMPLES = 20_480;
export const STACK_SEED = 1;

/**
 * A stack by the three ways that are taught: all tolerances to one side (worst case); the root of the sum of
 * their squares, which takes each tolerance whole; and drawn at random, 95 % of the draws (Monte Carlo).
 *
 * @returns none where nothing in the stack is in doubt
 */
export function addTolerances(book: Book, frame: Frame, stack: number): readonly StackMethod[] {
  const [spread] = spreadOf(book, frame, stack);
  if (spread === undefined) return [];
  const { value, worst, likely } = spread;
  // A tolerance is √3 standard uncertainties of limits between which any value is as likely.
  const reach = Math.sqrt(3) * likely.u;
  const options = { samples: STACK_SAMPLES, seed: STACK_SEED };
  const [from, to] = describeSamples(runSimulation(book, frame, stack, options)).shortest;
  return [
    { method: 'worst', from: worst.from, to: worst.to },
    { method: 'squares', from: value - reach, to: value + reach },
    { method: 'simulated', from, to },
  ];
}
