/** Where a function comes to zero, or nearest to it. */
export interface Roots {
  /** Places in rising order; a stretch where it stays at zero is one entry with both its ends. */
  readonly roots: readonly Root[];
  /** Where the function is nearest to zero; undefined where it has no value anywhere. */
  readonly closest: { readonly x: number; readonly y: number } | undefined;
  /** False where the function is the same everywhere it was tried. */
  readonly varies: boolean;
}

export interface Root {
  readonly from: number;
  readonly to: number;
}

/** Even steps in which sign changes are looked for; two roots nearer than a step are found where the function dips between them. */
const STEPS = 400;
/** Share of a step by which a sample moves off a root. */
const BESIDE = 1e-4;
/** Halvings down to the last bit of a double. */
const HALVINGS = 100;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * All roots of a function between two ends, without derivatives. A sign change is bracketed and
 * halved; where the function jumps over zero there is no root; where it touches zero without
 * crossing, the touching point is sought as the least of its size; a stretch at zero is one root.
 *
 * @param at NaN where there is no value
 * @param scale what the function's values are measured by: below 1e-12 of it counts as zero
 */
export function findRoots(
  at: (x: number) => number,
  from: number,
  to: number,
  scale: number,
): Roots {
  const zero = 1e-12 * Math.abs(scale);
  const step = (to - from) / STEPS;
  const even = Array.from({ length: STEPS + 1 }, (_, i) => sampleAt(at, from + step * i));
  const samples = besideHits(at, even, step, zero);
  const known = samples.filter(({ y }) => !Number.isNaN(y));
  const found = [
    ...flats(even, zero),
    ...samples.slice(1).flatMap((b, i) => crossing(at, samples[i]!, b, zero)),
    ...samples.slice(2).flatMap((c, i) => touching(at, [samples[i]!, samples[i + 1]!, c], zero)),
    ...edges(at, samples)
      .filter(({ y }) => Math.abs(y) <= zero)
      .map(({ x }) => ({ from: x, to: x })),
  ];
  const roots = merge(found, (to - from) * 1e-9);
  const hits = roots.map(({ from: x }) => sampleAt(at, x));
  const closest = [...hits, ...known, ...edges(at, samples), ...dips(at, samples)].reduce<
    Sample | undefined
  >(
    (best, sample) => (best === undefined || Math.abs(sample.y) < Math.abs(best.y) ? sample : best),
    undefined,
  );
  const varies = known.some(({ y }) => Math.abs(y - known[0]!.y) > 1e-12 * Math.abs(scale));
  return { roots, closest, varies };
}

interface Sample {
  readonly x: number;
  readonly y: number;
}

function sampleAt(at: (x: number) => number, x: number): Sample {
  return { x, y: at(x) };
}

/** A sample that hits zero hides which way the function goes there: two close beside it take its place. */
function besideHits(
  at: (x: number) => number,
  even: readonly Sample[],
  step: number,
  zero: number,
): readonly Sample[] {
  const isHit = (sample: Sample | undefined) => sample !== undefined && Math.abs(sample.y) <= zero;
  return even.flatMap((sample, i) => {
    const alone = isHit(sample) && !isHit(even[i - 1]) && !isHit(even[i + 1]);
    if (!alone) return [sample];
    const beside = [sample.x - BESIDE * step, sample.x + BESIDE * step];
    const inside = beside.filter((x) => x > even[0]!.x && x < even.at(-1)!.x);
    return inside.map((x) => sampleAt(at, x));
  });
}

/** Stretches of two or more neighbouring samples at zero, and single samples that hit it. */
function flats(samples: readonly Sample[], zero: number): readonly Root[] {
  const found: { from: number; to: number }[] = [];
  for (const [i, { x, y }] of samples.entries()) {
    if (!(Math.abs(y) <= zero)) continue;
    const before = samples[i - 1];
    const last = found.at(-1);
    if (last !== undefined && before !== undefined && last.to === before.x) last.to = x;
    else found.push({ from: x, to: x });
  }
  return found;
}

/** Halves a bracket; a jump over zero keeps its height however narrow the bracket becomes. */
function crossing(at: (x: number) => number, a: Sample, b: Sample, zero: number): readonly Root[] {
  if (!(a.y * b.y < 0) || Math.abs(a.y) <= zero || Math.abs(b.y) <= zero) return [];
  let [low, high] = [a, b];
  for (let i = 0; i < HALVINGS; i += 1) {
    const x = (low.x + high.x) / 2;
    if (x === low.x || x === high.x) break;
    const middle = sampleAt(at, x);
    if (Number.isNaN(middle.y)) return [];
    if (middle.y === 0) return [{ from: x, to: x }];
    if (middle.y * low.y < 0) high = middle;
    else low = middle;
  }
  const best = Math.abs(low.y) < Math.abs(high.y) ? low : high;
  return isRoot(low, high, zero) ? [{ from: best.x, to: best.x }] : [];
}

/** At a root both sides come to nothing; at a jump or a pole they do not. */
function isRoot(low: Sample, high: Sample, zero: number): boolean {
  const slope = Math.abs(high.y - low.y);
  return (
    (Number.isFinite(slope) &&
      slope <= Math.max(zero, 1e-6 * Math.max(Math.abs(low.y), Math.abs(high.y)))) ||
    slope <= 1e3 * zero
  );
}

/** A least size between three samples of one sign: zero there, or just over it. */
function touching(
  at: (x: number) => number,
  [a, b, c]: readonly [Sample, Sample, Sample],
  zero: number,
): readonly Root[] {
  const sameSign = a.y * b.y > 0 && b.y * c.y > 0;
  if (!sameSign || Math.abs(b.y) > Math.abs(a.y) || Math.abs(b.y) > Math.abs(c.y)) return [];
  const sign = Math.sign(b.y);
  const least = leastBetween((x) => sign * at(x), a.x, c.x);
  if (Math.abs(least.y) <= zero) return [{ from: least.x, to: least.x }];
  if (least.y > 0) return [];
  const turn: Sample = { x: least.x, y: sign * least.y };
  return [...crossing(at, a, turn, zero), ...crossing(at, turn, c, zero)];
}

/** Least value in an interval that holds one dip, by golden section. */
function leastBetween(at: (x: number) => number, from: number, to: number): Sample {
  let [low, high] = [from, to];
  let left = sampleAt(at, high - GOLDEN * (high - low));
  let right = sampleAt(at, low + GOLDEN * (high - low));
  for (let i = 0; i < HALVINGS && high - low > 1e-15 * Math.abs(high); i += 1) {
    if (left.y < right.y) {
      high = right.x;
      right = left;
      left = sampleAt(at, high - GOLDEN * (high - low));
    } else {
      low = left.x;
      left = right;
      right = sampleAt(at, low + GOLDEN * (high - low));
    }
  }
  return left.y < right.y ? left : right;
}

/** Where the function begins or ceases to have a value. */
function edges(at: (x: number) => number, samples: readonly Sample[]): readonly Sample[] {
  return samples.slice(1).flatMap((b, i) => {
    const a = samples[i]!;
    if (Number.isNaN(a.y) === Number.isNaN(b.y)) return [];
    let [inside, outside] = Number.isNaN(a.y) ? [b, a] : [a, b];
    for (let k = 0; k < HALVINGS; k += 1) {
      const middle = sampleAt(at, (inside.x + outside.x) / 2);
      if (Number.isNaN(middle.y)) outside = middle;
      else inside = middle;
    }
    return [inside];
  });
}

/** The least size between samples, for the closest approach. */
function dips(at: (x: number) => number, samples: readonly Sample[]): readonly Sample[] {
  return samples.slice(2).flatMap((c, i) => {
    const [a, b] = [samples[i]!, samples[i + 1]!];
    const isDip = Math.abs(b.y) <= Math.abs(a.y) && Math.abs(b.y) <= Math.abs(c.y);
    if (!isDip) return [];
    const { x } = leastBetween((place) => Math.abs(at(place)), a.x, c.x);
    return [sampleAt(at, x)];
  });
}

function merge(found: readonly Root[], near: number): readonly Root[] {
  const merged: { from: number; to: number }[] = [];
  for (const root of [...found].sort((a, b) => a.from - b.from)) {
    const last = merged.at(-1);
    if (last !== undefined && root.from - last.to <= near) last.to = Math.max(last.to, root.to);
    else merged.push({ ...root });
  }
  return merged.map((root) =>
    root.to - root.from <= near ? { from: root.from, to: root.from } : root,
  );
}
