import type { Book } from '../book.ts';
import type { Frame } from '../frame.ts';
import { describeSamples } from './distribution.ts';
import { runSimulation } from './simulate.ts';
import { type Share, spreadOf } from './spread.ts';
import { type Doubt, listDoubts } from './uncertain-inputs.ts';

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
  const { value, worst } = spread;
  const doubts = listDoubts(book, frame, stack);
  const reach = Math.hypot(...spread.shares.map((share) => toleranceOf(share, doubts)));
  const options = { samples: STACK_SAMPLES, seed: STACK_SEED };
  const [from, to] = describeSamples(runSimulation(book, frame, stack, options)).shortest;
  return [
    { method: 'worst', from: worst.from, to: worst.to },
    { method: 'squares', from: value - reach, to: value + reach },
    { method: 'simulated', from, to },
  ];
}

/** What the whole tolerance of one given makes of the stack; of repeated readings, half from end to end. */
function toleranceOf({ cell, effect }: Share, doubts: readonly Doubt[]): number {
  const own = doubts.filter((doubt) => doubt.cell === cell);
  const u = Math.hypot(...own.map((doubt) => doubt.u));
  const width = own.reduce((sum, { minus, plus }) => sum + (minus + plus) / 2, 0);
  return (effect / u) * width;
}

/** True where a reading in the stack was repeated: its doubt is then drawn further than it was read. */
export function hasRepeated(book: Book, frame: Frame, stack: number): boolean {
  return listDoubts(book, frame, stack).some(({ shape }) => shape === 'student');
}
