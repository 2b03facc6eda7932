import { fitExponent } from './growth.ts';
import { measure, median } from './measure.ts';
import { alone, growth, type Row } from './table.ts';

/** Work that is timed on something larger and larger. */
export interface Growing {
  readonly what: string;
  readonly sizes: readonly number[];
  /** What a size counts. */
  readonly of: string;
  /** Prepares the work of one size. */
  readonly work: (size: number) => () => unknown;
  /** Bar for the exponent of growth. */
  readonly bar: number;
  /** Times that each size is taken: the quicker the work, the more of them a busy moment may spoil. */
  readonly rounds: number;
  /** How often it is all prepared afresh: how it comes to lie in the memory is a matter of luck. */
  readonly openings: number;
}

/** The time of each size, the middle of all openings, and the exponent with which it grows. */
export function benchGrowth({
  what,
  sizes,
  of,
  work,
  bar,
  rounds,
  openings,
}: Growing): readonly Row[] {
  const taken = Array.from({ length: openings }, () =>
    measure(
      sizes.map((size) => ({ name: String(size), work: work(size) })),
      { rounds },
    ),
  );
  const points = sizes.map(
    (size) => [size, median(taken.map((medians) => medians.get(String(size))!))] as const,
  );
  const times = points.map(([size, time]) => alone(`${what}, ${size} ${of}`, time));
  return [...times, growth(`${what}: exponent of growth`, fitExponent(points), bar)];
}
