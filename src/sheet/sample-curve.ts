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
  return withTips(found, sample);
}

/**
 * The samples, and one more at the tip of each peak and trough whose sides run straight. Halving comes
 * near enough to such a corner to draw it, and not near enough to read it off.
 */
function withTips(samples: readonly Sample[], sample: (x: number) => Sample): readonly Sample[] {
  const tips = new Map<number, Sample>();
  for (let k = 1; k < samples.length - 1; k += 1) {
    for (let line = 0; line < samples[k]!.ys.length; line += 1) {
      if (!turnsAt(samples, k, line)) continue;
      for (const start of [k - 1, k]) {
        const x = tips.has(start) ? undefined : meetingPlace(samples, start, line);
        if (x !== undefined) tips.set(start, sample(x));
      }
    }
  }
  return samples.flatMap((each, i) => [each, ...(tips.has(i) ? [tips.get(i)!] : [])]);
}

/** Whether a line is higher, or lower, at a sample than at both beside it. */
function turnsAt(samples: readonly Sample[], k: number, line: number): boolean {
  const [before, y, after] = [k - 1, k, k + 1].map((i) => samples[i]!.ys[line]!);
  return (y! - before!) * (y! - after!) > 0;
}

/** Where the stretch before a sample and the one after the next meet when they are drawn on, if between the two. */
function meetingPlace(samples: readonly Sample[], start: number, line: number): number | undefined {
  const [a, b, c, d] = [start - 1, start, start + 1, start + 2].map((i) => samples[i]);
  if (a === undefined || d === undefined) return undefined;
  const slope = (p: Sample, q: Sample) => (q.ys[line]! - p.ys[line]!) / (q.x - p.x);
  const [rise, fall] = [slope(a, b!), slope(c!, d)];
  const x = b!.x + (c!.ys[line]! - b!.ys[line]! - fall * (c!.x - b!.x)) / (rise - fall);
  return x > b!.x && x < c!.x ? x : undefined;
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
