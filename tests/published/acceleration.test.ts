import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { TIME_OVER_DISTANCE } from '../../src/trade/acceleration.ts';
import { BEST_SHIFT_SPEEDS } from '../../src/trade/best-shift.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';
import { numberIn, openNotebooks, work } from '../support/notebooks.ts';
import { type OutsideCheck, readPublished, testPublished } from '../support/published.ts';
import { runFunction } from '../support/run-function.ts';
import { ROOT } from '../support/source-tree.ts';

testPublished('acceleration.json');

type Car = readonly [
  row: number,
  horsepower: number,
  thousandsOfPounds: number,
  axle: number,
  quarter: number,
  gears: number,
  manual: 0 | 1,
];

const { rows: CARS } = JSON.parse(readFileSync(join(ROOT, 'shared/mtcars.json'), 'utf8')) as {
  readonly rows: readonly Car[];
};
const BOOK = openNotebooks();
const FEEL = '25-what-it-will-feel-like';

describe('the 32 cars', () => {
  test('have the sums that the data set is known by', () => {
    const sum = (column: number) => CARS.reduce((total, car) => total + car[column]!, 0);
    expect(CARS.map(([row]) => row)).toEqual(CARS.map((_, i) => i + 1));
    expect(sum(1)).toBe(4694);
    expect(sum(2)).toBeCloseTo(102.952, 9);
    expect(sum(3)).toBeCloseTo(115.09, 9);
    expect(sum(4)).toBeCloseTo(571.16, 9);
    expect([sum(5), sum(6)]).toEqual([118, 13]);
  });

  test('are those that the checks of the rule are worked on', () => {
    const { checks } = readPublished<{ checks: readonly OutsideCheck[] }>('acceleration.json');
    const given = checks.filter((check) => check.given?.masses !== undefined);
    expect(given).toHaveLength(5);
    for (const { given: lists } of given) {
      expect(numbersOf(lists!.masses!)).toEqual(CARS.map((car) => Math.round(car[2] * 1000)));
      expect(numbersOf(lists!.powers!)).toEqual(CARS.map((car) => car[1]));
      expect(numbersOf(lists!.times!)).toEqual(CARS.map((car) => car[4]));
    }
  });

  test('are met by the whole run, one engine scaled to each, within what the sheet says', () => {
    const misses = CARS.map((car) => car[4] - quarterMileOf(car));
    const mean = misses.reduce((a, b) => a + b) / misses.length;
    const deviation = Math.sqrt(
      misses.reduce((total, miss) => total + (miss - mean) ** 2, 0) / (misses.length - 1),
    );
    expect(mean).toBeCloseTo(-0.9, 1);
    expect(deviation).toBeCloseTo(1.2, 1);
    const spread = Math.sqrt(misses.reduce((total, miss) => total + miss ** 2, 0) / misses.length);
    expect(numberIn(work(BOOK, FEEL), 'spread', 's')).toBeCloseTo(spread, 1);
  });
});

test('on constant power time times speed is 1350 s·mph over a quarter mile (derived)', () => {
  const worked = work(BOOK, FEEL);
  const [time, speed] = [
    numberIn(worked, 'ideal_quarter', 's'),
    numberIn(worked, 'ideal_trap', 'mph'),
  ];
  expect(time * speed).toBeCloseTo(1350, 9);
});

const si = (value: number, unit: string) => value * parseUnit(unit)!.factor;
const list = (values: readonly number[], unit = '') =>
  Float64Array.from(values, (value) => (unit === '' ? value : si(value, unit)));

/** The worked example's curve, its power made 1 hp. */
const SPEEDS = [1000, 1500, 2000, 2500, 3000, 3500, 4000, 4500, 5000, 5500];
const TORQUES = [118, 138, 152, 161, 165, 162, 154, 143, 128, 108].map((t) => t / 122.52453);
/** Invented sets of a general kind, by manual or not and by the number of gears. */
const SETS: Readonly<Record<string, readonly number[]>> = {
  '1/5': [3.15, 1.95, 1.35, 1, 0.8],
  '1/4': [3.4, 2.0, 1.35, 1],
  '0/4': [3.6, 2.4, 1.5, 1],
  '0/3': [2.45, 1.5, 1],
};

/** The sheet's own run for a car of which only these columns are known: same body, tyre and curve for all. */
function quarterMileOf([, horsepower, weight, axle, , gears, manual]: Car): number {
  const mass = si(weight * 1000, 'lb');
  const force = mass * 9.80665;
  const gearing = SETS[`${manual}/${gears}`]!.map((ratio) => ratio * axle);
  const efficiency = manual === 1 ? 0.93 : 0.88;
  const speeds = list(SPEEDS, 'rpm');
  const torques = list(
    TORQUES.map((torque) => torque * horsepower * efficiency),
    'lbf·ft',
  );
  const perMetre = (2 * Math.PI) / (3.05 * si(25, 'in'));
  const turns = list(gearing.map((overall) => overall * perMetre));
  const limit = si(5500, 'rpm');
  const start = manual === 1 ? [si(2500, 'rpm'), 1, 0] : [si(1800, 'rpm'), 2, 0.04];
  return runFunction(
    TIME_OVER_DISTANCE,
    si(1320, 'ft'),
    speeds,
    torques,
    turns,
    list(gearing.map((overall) => mass * (1.04 + 0.0025 * overall ** 2))),
    0.01 * force,
    (1.204 * 8.6 * si(1, 'ft') ** 2) / 2,
    (0.8 * 0.47 * force) / (1 - (0.8 * 22) / 104),
    manual === 1
      ? (runFunction(BEST_SHIFT_SPEEDS, speeds, torques, turns, limit) as Float64Array)
      : si(4800, 'rpm'),
    limit,
    manual === 1 ? 0.6 : 0,
    ...start,
  ) as number;
}

function numbersOf(text: string): readonly number[] {
  return JSON.parse(text.slice(0, text.indexOf(']') + 1)) as number[];
}
