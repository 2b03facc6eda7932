/** One of several pieces of work that are timed side by side. */
export interface Contender {
  readonly name: string;
  /** What it returns is kept, so that the work cannot be optimised away. */
  readonly work: () => unknown;
}

export interface MeasureOptions {
  readonly rounds?: number;
  /** Milliseconds that one round of a contender lasts at least. */
  readonly roundLength?: number;
}

/** Milliseconds that one piece of work takes: the median of the rounds, by the contender's name. */
export type Medians = ReadonlyMap<string, number>;

/** Holds the last result of all. */
let kept: unknown;

/**
 * Times contenders in turns, a round of each after the other, so that a busy moment of the machine
 * falls on all of them alike.
 */
export function measure(
  contenders: readonly Contender[],
  { rounds = 60, roundLength = 3 }: MeasureOptions = {},
): Medians {
  const prepared = contenders.map((contender) => ({
    ...contender,
    times: countTimes(contender.work, roundLength),
    samples: [] as number[],
  }));
  for (let round = 0; round < rounds; round += 1) {
    for (const { work, times, samples } of prepared) samples.push(timeOf(work, times) / times);
  }
  return new Map(prepared.map(({ name, samples }) => [name, median(samples)]));
}

/** How often the work fits into a round; finding out warms it up as well. */
function countTimes(work: () => unknown, roundLength: number): number {
  let times = 1;
  while (timeOf(work, times) < roundLength) times *= 2;
  timeOf(work, times);
  return times;
}

function timeOf(work: () => unknown, times: number): number {
  const start = performance.now();
  for (let i = 0; i < times; i += 1) kept = work();
  return performance.now() - start;
}

/** The last result, for those who want to see that there was one. */
export function lastResult(): unknown {
  return kept;
}

/** The middle of the numbers; of an even count the mean of the two in the middle. */
export function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
