/** How far a result may lie when every given may lie anywhere between its limits. */
export interface WorstCase {
  readonly from: number;
  readonly to: number;
  /** `corners`: the ends of the limits tried; `search`: the inside searched too, since the result does not simply rise or fall with each given. */
  readonly method: 'corners' | 'search';
  /** Set where the result has no value at some place within the limits. */
  readonly gap?: true;
}

/** All corners are tried for so many givens, 256 of them; for more, the corner to which each given pulls. */
const MOST_CORNERS = 8;
const SEARCHES = 200;
const ROUNDS = 20;

export interface Limits {
  readonly low: number;
  readonly high: number;
  readonly value: number;
}

/**
 * The least and the largest value of a function over a box. Exact where it rises or falls with each
 * given; where it turns on the way, a search of the inside, and the result says so.
 *
 * @param at NaN where there is no value: such places are passed over
 */
export function worstCase(
  at: (values: readonly number[]) => number,
  box: readonly Limits[],
): WorstCase {
  const middle = box.map(({ value }) => value);
  const seen = createExtremes(at);
  const nominal = seen.try(middle);
  const pulls = box.map((limits, i) => pullOf(limits, i, middle, nominal, seen));
  for (const corner of cornersOf(box, pulls)) seen.try(corner);
  if (!pulls.includes('turns')) return { ...seen.found(), method: 'corners' };
  searchInside(box, seen);
  return { ...seen.found(), method: 'search' };
}

interface Extremes {
  try(values: readonly number[]): number;
  best(side: 1 | -1): readonly number[];
  found(): Omit<WorstCase, 'method'>;
}

function createExtremes(at: (values: readonly number[]) => number): Extremes {
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let [least, most]: readonly (readonly number[])[] = [[], []];
  let hasGap = false;
  return {
    try(values) {
      const y = at(values);
      if (Number.isNaN(y)) hasGap = true;
      if (y < from) [from, least] = [y, values];
      if (y > to) [to, most] = [y, values];
      return y;
    },
    best: (side) => (side === 1 ? most! : least!),
    found: () => ({ from, to, ...(hasGap ? { gap: true as const } : {}) }),
  };
}

type Pull = 'rises' | 'falls' | 'turns';

/** Which way a result goes with one given, judged at quarters of its limits. */
function pullOf(
  { low, high }: Limits,
  i: number,
  middle: readonly number[],
  nominal: number,
  seen: Extremes,
): Pull {
  const shares = [0, 0.25, 0.5, 0.75, 1];
  const ys = shares
    .map((share) => seen.try(middle.with(i, low + share * (high - low))))
    .filter(Number.isFinite);
  // What binary rounding leaves of terms that cancel is no turning.
  const slack = 1e-12 * Math.max(Math.abs(nominal), ...ys.map(Math.abs));
  const steps = ys.slice(1).map((y, k) => y - ys[k]!);
  if (steps.every((step) => step >= -slack)) return 'rises';
  return steps.every((step) => step <= slack) ? 'falls' : 'turns';
}

function* cornersOf(box: readonly Limits[], pulls: readonly Pull[]): Generator<readonly number[]> {
  if (box.length <= MOST_CORNERS) {
    for (let bits = 0; bits < 2 ** box.length; bits += 1) {
      yield box.map(({ low, high }, i) => ((bits >> i) & 1 ? high : low));
    }
    return;
  }
  for (const side of ['rises', 'falls'] as const) {
    yield box.map(({ low, high }, i) => (pulls[i] === side ? high : low));
  }
}

/** Tries places spread evenly over the box, then walks from the best of them along each given. */
function searchInside(box: readonly Limits[], seen: Extremes): void {
  for (let i = 1; i <= SEARCHES; i += 1) {
    seen.try(box.map(({ low, high }, k) => low + fraction(i * GOLDEN ** (k + 1)) * (high - low)));
  }
  for (const side of [1, -1] as const) {
    let width = 0.25;
    for (let round = 0; round < ROUNDS; round += 1, width *= 0.6) {
      for (const [k, { low, high }] of box.entries()) {
        const place = seen.best(side);
        for (const step of [-width, width]) {
          const moved = Math.min(high, Math.max(low, place[k]! + step * (high - low)));
          seen.try(place.with(k, moved));
        }
      }
    }
  }
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

function fraction(x: number): number {
  return x - Math.floor(x);
}
