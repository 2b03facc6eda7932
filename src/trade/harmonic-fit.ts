import { fitLinear } from './least-squares.ts';

/** Readings round a circle, taken apart: mean, once per turn, twice per turn, and what is left. */
export interface HarmonicFit {
  readonly mean: number;
  /** Once per turn, toward angle 0 and toward a quarter turn: the part that an offset makes. */
  readonly first: readonly [cos: number, sin: number];
  /** Twice per turn: the part that an oval makes. */
  readonly second: readonly [cos: number, sin: number];
  /** What neither explains, by reading. */
  readonly residuals: readonly number[];
  /** Readings more than the fit has unknowns. */
  readonly freedom: number;
  /** Standard deviation of the first harmonic, in its worst direction, for one of 1 of a reading. */
  readonly gain: number;
}

const TURN = 2 * Math.PI;
/** Angles nearer than this, in rad, are one position read twice. */
const SAME = 1e-6;
/** From so many positions on, offset and oval are found together. */
export const FOR_BOTH = 5;
/** With fewer there is no circle. */
export const FOR_CIRCLE = 3;

/**
 * Fits offset and oval to dial readings by least squares. From five positions on both at once, so
 * that an oval does not pass for an offset where a position is missing. With three or four the
 * circle alone is fitted, and the oval is what the fourth reading leaves.
 *
 * @param readings in any one unit
 * @param angles in rad, one a reading, at least three of them different
 */
export function fitHarmonics(readings: ArrayLike<number>, angles: ArrayLike<number>): HarmonicFit {
  const at = Array.from(angles);
  const once = [at.map(() => 1), at.map(Math.cos), at.map(Math.sin)];
  const twice = [at.map((angle) => Math.cos(2 * angle)), at.map((angle) => Math.sin(2 * angle))];
  return countPositions(at) >= FOR_BOTH
    ? fitBoth(once, twice, readings)
    : fitCircle(once, twice, readings);
}

/** How many different angles there are, whole turns apart being the same. */
export function countPositions(angles: ArrayLike<number>): number {
  const sorted = Array.from(angles, (angle) => angle - TURN * Math.floor(angle / TURN)).sort(
    (a, b) => a - b,
  );
  const steps = sorted.map((angle, i) =>
    i === 0 ? angle + TURN - sorted.at(-1)! : angle - sorted[i - 1]!,
  );
  const apart = steps.filter((step) => step > SAME).length;
  return sorted.length === 0 ? 0 : Math.max(1, apart);
}

type Columns = readonly (readonly number[])[];

function fitBoth(once: Columns, twice: Columns, readings: ArrayLike<number>): HarmonicFit {
  const { coefficients, residuals, inverse } = fitLinear([...once, ...twice], readings);
  const [mean, a, b, c, d] = coefficients as [number, number, number, number, number];
  const freedom = readings.length - 5;
  return { mean, first: [a, b], second: [c, d], residuals, freedom, gain: findGain(inverse) };
}

function fitCircle(once: Columns, twice: Columns, readings: ArrayLike<number>): HarmonicFit {
  const { coefficients, residuals, inverse } = fitLinear(once, readings);
  const [mean, a, b] = coefficients as [number, number, number];
  const second = leanOn(twice, residuals);
  const left = residuals.map(
    (value, i) => value - second[0] * twice[0]![i]! - second[1] * twice[1]![i]!,
  );
  return { mean, first: [a, b], second, residuals: left, freedom: 0, gain: findGain(inverse) };
}

/**
 * The least oval that comes nearest to what a circle leaves: four readings show one direction of
 * it only, so both parts cannot be solved for. With three readings the circle leaves nothing.
 */
function leanOn([cos, sin]: Columns, left: readonly number[]): readonly [number, number] {
  const pull = [project(cos!, left), project(sin!, left)] as const;
  const size = Math.hypot(...pull);
  if (size < 1e-12 * Math.hypot(...left) || size === 0) return [0, 0];
  const [c, d] = [pull[0] / size, pull[1] / size];
  const shape = cos!.map((value, i) => c * value + d * sin![i]!);
  const amount = project(shape, left) / project(shape, shape);
  return [amount * c, amount * d];
}

function project(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * b[i]!, 0);
}

/** Root of the larger principal value of the first harmonic's block of the inverse. */
function findGain(inverse: Columns): number {
  const [aa, ab, bb] = [inverse[1]![1]!, inverse[1]![2]!, inverse[2]![2]!];
  return Math.sqrt((aa + bb) / 2 + Math.hypot((aa - bb) / 2, ab));
}
