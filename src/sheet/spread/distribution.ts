/** What many samples of one result come to. SI. */
export interface Distribution {
  readonly samples: number;
  /** Draws that gave no result. */
  readonly missing: number;
  readonly mean: number;
  /** Standard deviation: the standard uncertainty. */
  readonly u: number;
  /** Ends that leave 2.5 % of the samples on each side. */
  readonly symmetric: readonly [from: number, to: number];
  /** The shortest range that holds 95 % of the samples. */
  readonly shortest: readonly [from: number, to: number];
  /** Counts in bins of equal width from the least sample to the largest. */
  readonly bins: readonly { readonly from: number; readonly to: number; readonly count: number }[];
}

const CONFIDENCE = 0.95;
const BINS = 60;

/** Sums up samples. Source of both coverage intervals: JCGM 101, 7.7. */
export function describeSamples(samples: Float64Array): Distribution {
  const sorted = samples.filter((x) => x - x === 0).sort();
  const n = sorted.length;
  const mean = sorted.reduce((a, b) => a + b, 0) / n;
  const variance = sorted.reduce((sum, x) => sum + (x - mean) ** 2, 0) / Math.max(1, n - 1);
  return {
    samples: n,
    missing: samples.length - n,
    mean,
    u: Math.sqrt(variance),
    symmetric: symmetricRange(sorted),
    shortest: shortestRange(sorted),
    bins: binsOf(sorted),
  };
}

function symmetricRange(sorted: Float64Array): [number, number] {
  const tail = (1 - CONFIDENCE) / 2;
  return [quantile(sorted, tail), quantile(sorted, 1 - tail)];
}

function quantile(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1);
  const low = Math.floor(place);
  const high = Math.min(low + 1, sorted.length - 1);
  return sorted[low]! + (place - low) * (sorted[high]! - sorted[low]!);
}

function shortestRange(sorted: Float64Array): [number, number] {
  const held = Math.min(sorted.length - 1, Math.round(CONFIDENCE * sorted.length));
  let best = 0;
  for (let i = 1; i + held < sorted.length; i += 1) {
    if (sorted[i + held]! - sorted[i]! < sorted[best + held]! - sorted[best]!) best = i;
  }
  return [sorted[best]!, sorted[best + held]!];
}

function binsOf(sorted: Float64Array): Distribution['bins'] {
  const from = sorted[0] ?? 0;
  const width = ((sorted[sorted.length - 1] ?? 0) - from) / BINS;
  if (!(width > 0)) return [{ from, to: from, count: sorted.length }];
  const counts = new Array<number>(BINS).fill(0);
  for (const x of sorted) counts[Math.min(BINS - 1, Math.floor((x - from) / width))]! += 1;
  return counts.map((count, i) => ({ from: from + i * width, to: from + (i + 1) * width, count }));
}
