/** One place on a curve of several lines; a line without a value there has NaN, or none at all. */
export interface Sample {
  readonly x: number;
  readonly ys: readonly number[];
}

/** Even steps that every curve is sampled in. */
const STEPS = 120;
/** Halvings of a step in search of a corner or a jump. */
const HALVINGS = 16;
/** Off the straight by less than this share of the height is straight enough to draw. */
const STRAIGHT = 5e-4;
/** A curve that jumps all the time is not worth more. */
const MOST_SAMPLES = 3000;

/**
 * Samples lines between two ends, closely enough to be drawn: even steps, halved where a line bends
 * between them. At a jump, or where a line ends, the last two samples stand too close to see.
 */
export function sampleCurve(
  at: (x: number) => readonly number[],
  from: number,
  to: number,
): readonly Sample[] {
  const sample = (x: number): Sample => ({ x, ys: at(x) });
  const even = Array.from({ length: STEPS + 1 }, (_, i) =>
    sample(from + ((to - from) * i) / STEPS),
  );
  const tolerance = STRAIGHT * heightOf(even);
  const found: Sample[] = [];
  let left = MOST_SAMPLES;

  /** Mutates `found`: what lies between two samples, ends left out. */
  function fill(a: Sample, b: Sample, halvings: number): void {
    if (halvings === 0 || left <= 0) return;
    const middle = sample((a.x + b.x) / 2);
    left -= 1;
    if (isStraight(a, middle, b, tolerance)) return;
    fill(a, middle, halvings - 1);
    found.push(middle);
    fill(middle, b, halvings - 1);
  }

  for (const [i, b] of even.entries()) {
    const a = even[i - 1];
    if (a !== undefined) fill(a, b, HALVINGS);
    found.push(b);
  }
  return found;
}

function heightOf(samples: readonly Sample[]): number {
  const ys = samples.flatMap((sample) => sample.ys).filter(Number.isFinite);
  return (
    ys.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY) -
    ys.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY)
  );
}

function isStraight(a: Sample, middle: Sample, b: Sample, tolerance: number): boolean {
  const lines = Math.max(a.ys.length, middle.ys.length, b.ys.length);
  for (let i = 0; i < lines; i += 1) {
    const [left, y, right] = [
      a.ys[i] ?? Number.NaN,
      middle.ys[i] ?? Number.NaN,
      b.ys[i] ?? Number.NaN,
    ];
    const gaps = [left, y, right].filter(Number.isNaN).length;
    if (gaps === 3) continue;
    if (gaps > 0 || Math.abs(y - (left + right) / 2) > tolerance) return false;
  }
  return true;
}
