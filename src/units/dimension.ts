/**
 * A dimension as exponents of length, mass, time and angle. Angle counts as a
 * dimension of its own, so that a turning speed (angle/time) is never taken for a
 * frequency, nor torque (energy/angle) for energy.
 *
 * Source for torque as joule per radian: P. Quincey, "The range of options for handling plane
 * angle and solid angle within a system of units", Metrologia 53 (2016) (from memory).
 */
export type Dimension = readonly [length: number, mass: number, time: number, angle: number];

export const NONE: Dimension = [0, 0, 0, 0];

/** Product of two dimensions. */
export function multiplyDimensions(a: Dimension, b: Dimension): Dimension {
  return combine(a, b, 1);
}

/** Quotient of two dimensions. */
export function divideDimensions(a: Dimension, b: Dimension): Dimension {
  return combine(a, b, -1);
}

/** A dimension to a power; the exponent may be a fraction. */
export function raiseDimension(a: Dimension, exponent: number): Dimension {
  return [
    tidy(a[0] * exponent),
    tidy(a[1] * exponent),
    tidy(a[2] * exponent),
    tidy(a[3] * exponent),
  ];
}

export function equalDimensions(a: Dimension, b: Dimension): boolean {
  return a[0] === b[0] && a[1] === b[1] && a[2] === b[2] && a[3] === b[3];
}

/** True for a plain number: a ratio, a count, a percentage. */
export function isNone(a: Dimension): boolean {
  return equalDimensions(a, NONE);
}

function combine(a: Dimension, b: Dimension, sign: number): Dimension {
  return [
    tidy(a[0] + sign * b[0]),
    tidy(a[1] + sign * b[1]),
    tidy(a[2] + sign * b[2]),
    tidy(a[3] + sign * b[3]),
  ];
}

/** Divisible by all numbers up to 10. */
const PARTS = 2520;

/** Thirds and sevenths of an exponent meet again after adding and raising: 1/3 + 2/3 is 1. */
function tidy(exponent: number): number {
  const parts = Math.round(exponent * PARTS);
  const isShare = Math.abs(exponent * PARTS - parts) < 1e-6;
  return (isShare ? parts / PARTS : Math.round(exponent * 1e9) / 1e9) + 0;
}

const NAMES: readonly (readonly [string, Dimension])[] = [
  ['plain number', NONE],
  ['length', [1, 0, 0, 0]],
  ['area', [2, 0, 0, 0]],
  ['volume', [3, 0, 0, 0]],
  ['mass', [0, 1, 0, 0]],
  ['time', [0, 0, 1, 0]],
  ['angle', [0, 0, 0, 1]],
  ['speed', [1, 0, -1, 0]],
  ['acceleration', [1, 0, -2, 0]],
  ['turning speed', [0, 0, -1, 1]],
  ['turning acceleration', [0, 0, -2, 1]],
  ['frequency', [0, 0, -1, 0]],
  ['force', [1, 1, -2, 0]],
  ['torque', [2, 1, -2, -1]],
  ['energy', [2, 1, -2, 0]],
  ['power', [2, 1, -3, 0]],
  ['pressure', [-1, 1, -2, 0]],
  ['density', [-3, 1, 0, 0]],
  ['length per turn', [1, 0, 0, -1]],
  ['turn per length', [-1, 0, 0, 1]],
  ['stiffness', [0, 1, -2, 0]],
  ['number per length', [-1, 0, 0, 0]],
];

const SYMBOLS = ['length', 'mass', 'time', 'angle'] as const;

/** The everyday name of a dimension ("turning speed"), else its make-up ("length²·mass/time"). */
export function nameDimension(dimension: Dimension): string {
  for (const [name, named] of NAMES) if (equalDimensions(named, dimension)) return name;
  const above = powers(dimension, 1);
  const below = powers(dimension, -1);
  return below === '' ? above : `${above === '' ? '1' : above}/${below}`;
}

function powers(dimension: Dimension, sign: 1 | -1): string {
  return SYMBOLS.map((symbol, i) => [symbol, sign * dimension[i]!] as const)
    .filter(([, exponent]) => exponent > 0)
    .map(([symbol, exponent]) => (exponent === 1 ? symbol : `${symbol}^${exponent}`))
    .join('·');
}
