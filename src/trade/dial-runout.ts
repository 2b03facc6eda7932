import type { FunctionDeclaration, Parameter, Result } from '../language/functions/declaration.ts';
import type { QuantityList, Value } from '../language/kind.ts';
import type { Dimension } from '../units/dimension.ts';
import {
  countPositions,
  FOR_BOTH,
  FOR_CIRCLE,
  fitHarmonics,
  type HarmonicFit,
} from './harmonic-fit.ts';
import { rememberLast } from './remember.ts';

const ANGLE: Dimension = [0, 0, 0, 1];
const TURN = 2 * Math.PI;
/** An offset this many times as uncertain as from positions all round is worth a word. */
const WORTH_A_WORD = 1.5;
/** Harmonics below this share of the largest reading are rounding. */
const NOTHING = 1e-9;

const PARAMETERS: readonly Parameter[] = [
  { name: 'readings', shape: 'list', dimension: 'a', doc: 'dial readings, plunger in positive' },
  {
    name: 'angles',
    shape: 'list',
    dimension: ANGLE,
    doc: 'where each was read, clockwise from 12 o’clock; need not be evenly spaced',
  },
];

const SOURCE =
  'derived: least squares; for evenly spaced readings the sums of the least-squares circle in the NIST/SEMATECH e-Handbook';
const VALIDITY =
  'three different positions at least, five to tell an oval from an offset; offsets that are small against the bore';

/** Bore and face, each as read and as it will be: every result of a sheet asks for one of them. */
const fitOf = rememberLast(4, ([readings, angles]) =>
  fitHarmonics(readings as QuantityList, angles as QuantityList),
);

interface Dial {
  readonly name: string;
  readonly doc: string;
  readonly result: Result;
  readonly run: (fit: HarmonicFit, readings: QuantityList) => Value;
  readonly example: readonly [string, string];
  readonly positions?: number;
  /** Readings more than unknowns that it needs. */
  readonly freedom?: number;
  readonly source?: string;
  readonly warn?: (readings: QuantityList, angles: QuantityList) => string | undefined;
}

function declare(dial: Dial): FunctionDeclaration {
  const { name, doc, result, example, source = SOURCE, warn = warnOfGap } = dial;
  return {
    name,
    doc,
    parameters: PARAMETERS,
    result,
    work: {
      type: 'whole',
      run: (readings, angles) => dial.run(fitOf([readings!, angles!]), readings as QuantityList),
      refuse: (readings, angles) => refuse(dial, readings as QuantityList, angles as QuantityList),
    },
    example,
    source,
    validity: VALIDITY,
    outside: (readings, angles) => warn(readings as QuantityList, angles as QuantityList),
  };
}

/** How far the readings are off centre: half of the total that a round bore would show. */
export const DIAL_OFFSET = declare({
  name: 'dial_offset',
  doc: 'How far a round thing stands off centre, from dial readings round it: the part of the readings that comes and goes once in a turn. Least squares, so positions may be missing; an oval is taken out where five positions or more allow it.',
  result: { shape: 'quantity', dimension: 'a' },
  run: ({ first }) => Math.hypot(...first),
  example: [
    'dial_offset([0 thou, 3 thou, -2 thou, 3 thou], [0 deg, 90 deg, 180 deg, 270 deg])',
    '1 thou',
  ],
});

export const DIAL_DIRECTION = declare({
  name: 'dial_direction',
  doc: 'Where the once-a-turn part of dial readings is highest, clockwise from 12 o’clock. With the plunger in positive and the dial on the crank, the bore’s centre lies opposite.',
  result: { shape: 'quantity', dimension: ANGLE },
  run: ({ first }, readings) => directionOf(first, 1, readings),
  example: [
    'dial_direction([0 thou, 5 thou, 0 thou, -5 thou], [0 deg, 90 deg, 180 deg, 270 deg])',
    '90 deg',
  ],
});

export const DIAL_OVAL = declare({
  name: 'dial_oval',
  doc: 'Out of round: the size of the part of dial readings that comes and goes twice in a turn. It adds twice this to the total reading at most, and no dowel takes it away.',
  result: { shape: 'quantity', dimension: 'a' },
  run: ({ second }) => Math.hypot(...second),
  example: [
    'dial_oval([0 thou, 3 thou, -2 thou, 3 thou], [0 deg, 90 deg, 180 deg, 270 deg])',
    '2 thou',
  ],
  positions: 4,
  warn: warnOfFew,
});

export const DIAL_OVAL_DIRECTION = declare({
  name: 'dial_oval_direction',
  doc: 'Where the twice-a-turn part of dial readings is highest, clockwise from 12 o’clock, less than half a turn; it is as high again opposite.',
  result: { shape: 'quantity', dimension: ANGLE },
  run: ({ second }, readings) => directionOf(second, 2, readings),
  example: [
    'dial_oval_direction([0 thou, 3 thou, -2 thou, 3 thou], [0 deg, 90 deg, 180 deg, 270 deg])',
    '90 deg',
  ],
  positions: 4,
  warn: warnOfFew,
});

export const DIAL_RESIDUALS = declare({
  name: 'dial_residuals',
  doc: 'What is left of each dial reading when mean, offset and oval are taken away: burrs, dirt, a slip of the eye.',
  result: { shape: 'list', dimension: 'a' },
  run: ({ residuals }) => Float64Array.from(residuals),
  example: [
    'dial_residuals([2 thou, 0 thou, 2 thou, 0 thou, 2 thou, 0 thou], [0 deg, 60 deg, 120 deg, 180 deg, 240 deg, 300 deg])',
    '[1 thou, -1 thou, 1 thou, -1 thou, 1 thou, -1 thou]',
  ],
});

export const DIAL_SCATTER = declare({
  name: 'dial_scatter',
  doc: 'Standard deviation of one dial reading, from what offset and oval leave unexplained.',
  result: { shape: 'quantity', dimension: 'a' },
  run: scatterOf,
  example: [
    'dial_scatter([1 thou, -1 thou, 1 thou, -1 thou, 1 thou, -1 thou], [0 deg, 60 deg, 120 deg, 180 deg, 240 deg, 300 deg])',
    'sqrt(6) * 1 thou',
  ],
  freedom: 1,
});

export const DIAL_GAIN = declare({
  name: 'dial_gain',
  doc: 'How uncertain the offset is for each unit that a dial reading is uncertain, in its worst direction: √(2/n) for n readings evenly spaced, more where positions are missing.',
  result: { shape: 'quantity' },
  run: ({ gain }) => gain,
  example: [
    'dial_gain([0 mm, 0 mm, 0 mm, 0 mm], [0 deg, 90 deg, 180 deg, 270 deg])',
    'sqrt(2 / 4)',
  ],
});

/** All functions of dial readings. */
export const DIAL_RUNOUT: readonly FunctionDeclaration[] = [
  DIAL_OFFSET,
  DIAL_DIRECTION,
  DIAL_OVAL,
  DIAL_OVAL_DIRECTION,
  DIAL_RESIDUALS,
  DIAL_SCATTER,
  DIAL_GAIN,
];

function refuse(dial: Dial, readings: QuantityList, angles: QuantityList): string | undefined {
  const { positions = FOR_CIRCLE, freedom = 0 } = dial;
  if (readings.length !== angles.length)
    return `${readings.length} readings at ${angles.length} positions; leave a blocked position out of both lists`;
  const found = countPositions(angles);
  if (found < positions)
    return `${found === 1 ? 'one position is' : `${found} different positions are`} too few; this takes ${positions}`;
  const needed = FOR_BOTH + freedom;
  if (freedom > 0 && (found < FOR_BOTH || readings.length < needed))
    return `${readings.length} readings at ${found} positions leave no scatter to judge by; take ${needed} or more, five of them at different positions`;
  return undefined;
}

function warnOfGap(readings: QuantityList, angles: QuantityList): string | undefined {
  const { gain } = fitOf([readings, angles]);
  const ratio = gain / Math.sqrt(2 / readings.length);
  return ratio < WORTH_A_WORD
    ? undefined
    : `so much of the circle is unread that the offset is ${ratio.toFixed(1)} times as uncertain as from positions all round`;
}

function warnOfFew(_: QuantityList, angles: QuantityList): string | undefined {
  return countPositions(angles) < FOR_BOTH
    ? 'four positions show an oval only as far as it lies along them; take five or more'
    : undefined;
}

/** 0 where there is nothing that could have a direction. */
function directionOf(
  [cos, sin]: readonly [number, number],
  order: number,
  readings: QuantityList,
): number {
  const largest = readings.reduce((most, reading) => Math.max(most, Math.abs(reading)), 0);
  if (Math.hypot(cos, sin) <= NOTHING * largest) return 0;
  const period = TURN / order;
  const angle = Math.atan2(sin, cos) / order;
  const positive = angle < 0 ? angle + period : angle;
  // Rounding must not make a whole turn of what points to 12 o'clock.
  return period - positive <= NOTHING * period ? 0 : positive;
}

function scatterOf({ residuals, freedom }: HarmonicFit): number {
  return Math.hypot(...residuals) / Math.sqrt(freedom);
}
