import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FunctionDeclaration } from '../../src/language/functions/declaration.ts';
import type { Value } from '../../src/language/kind.ts';
import {
  DISTANCE_AFTER,
  SPEED_AFTER,
  SPEED_OVER_DISTANCE,
  TIME_OVER_DISTANCE,
  TIME_TO_SPEED,
} from '../../src/trade/acceleration.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const list = (...numbers: number[]) => Float64Array.from(numbers);

/** Two gears on an engine of 200 N·m from 100 to 500 rad/s: pushes of 2 kN and 1 kN, 1 t, no road load. */
const CAR = {
  speeds: list(100, 500) as Value,
  torques: list(200, 200) as Value,
  turns: list(10, 5) as Value,
  masses: list(1000, 1000) as Value,
  rolling: 0 as Value,
  air: 0 as Value,
  grip: 1e9 as Value,
  leaveAt: 400 as Value,
  limit: 500 as Value,
  shiftTime: 0.5 as Value,
  launchSpeed: 0 as Value,
  multiplication: 1 as Value,
  slip: 0 as Value,
};

const ask = (declaration: FunctionDeclaration, asked: number, other: Partial<typeof CAR> = {}) =>
  runFunction(declaration, asked, ...Object.values({ ...CAR, ...other })) as number;
const refused = (
  declaration: FunctionDeclaration,
  asked: number,
  other: Partial<typeof CAR> = {},
) => refusalOf(declaration, asked, ...Object.values({ ...CAR, ...other }));

describe('under a constant push', () => {
  test('speed is push over mass times time', () => {
    expect(ask(SPEED_AFTER, 10)).toBeCloseTo(20, 9);
    expect(ask(TIME_TO_SPEED, 20)).toBeCloseTo(10, 9);
  });

  test('distance is half of that times time', () => {
    expect(ask(DISTANCE_AFTER, 10)).toBeCloseTo(100, 9);
    expect(ask(TIME_OVER_DISTANCE, 100)).toBeCloseTo(10, 9);
    expect(ask(SPEED_OVER_DISTANCE, 100)).toBeCloseTo(20, 9);
  });

  test('a standstill takes no time', () => {
    expect(ask(TIME_TO_SPEED, 0)).toBe(0);
    expect(ask(TIME_OVER_DISTANCE, 0)).toBe(0);
    expect(ask(SPEED_AFTER, 0)).toBe(0);
  });
});

describe('a shift', () => {
  test('comes where the gear is left, and the car rolls on meanwhile', () => {
    // 1st to 400 rad/s, 40 m/s, in 20 s; half a second; then 10 m/s at 1 m/s².
    expect(ask(SPEED_AFTER, 20)).toBeCloseTo(40, 9);
    expect(ask(SPEED_AFTER, 20.5)).toBeCloseTo(40, 9);
    expect(ask(TIME_TO_SPEED, 50)).toBeCloseTo(30.5, 9);
    expect(ask(DISTANCE_AFTER, 30.5)).toBeCloseTo(400 + 20 + 450, 7);
  });

  test('of an automatic takes none', () => {
    expect(ask(TIME_TO_SPEED, 50, { shiftTime: 0 })).toBeCloseTo(30, 9);
  });

  test('may come at an engine speed of its own in each gear', () => {
    expect(ask(TIME_TO_SPEED, 50, { leaveAt: list(300, 500) })).toBeCloseTo(15 + 0.5 + 20, 9);
  });

  test('comes no later than the limit, and the last gear runs to it', () => {
    expect(ask(TIME_TO_SPEED, 60, { leaveAt: list(900, 100) })).toBeCloseTo(25 + 0.5 + 10, 9);
  });

  test('costs speed where the air holds the car back', () => {
    const left = ask(TIME_TO_SPEED, 35, { air: 0.1, leaveAt: 350 });
    const rolled = ask(SPEED_AFTER, left + 0.5, { air: 0.1, leaveAt: 350 });
    // dv/dt = −c v²/m: 1/v grows by c t/m.
    expect(1 / rolled).toBeCloseTo(1 / 35 + (0.1 * 0.5) / 1000, 9);
  });
});

describe('the push', () => {
  test('is no more than the tyres bear', () => {
    expect(ask(SPEED_AFTER, 10, { grip: 1500 })).toBeCloseTo(15, 9);
  });

  test('is set against what turns with each gear', () => {
    const car = { masses: list(1250, 1000) };
    expect(ask(TIME_TO_SPEED, 50, car)).toBeCloseTo(25 + 0.5 + 10, 9);
  });

  test('is greater behind a converter, until it couples', () => {
    // Twice the torque at rest, down in a straight line to once at 30 m/s: a = 4 − v/15, 1 t.
    const car = { launchSpeed: 300, multiplication: 2 };
    expect(ask(TIME_TO_SPEED, 30, car)).toBeCloseTo(15 * Math.log(2), 4);
  });

  test('against the air has the closed form of its terminal speed', () => {
    const car = {
      turns: list(1),
      masses: list(1500),
      air: 0.5,
      leaveAt: 500,
      torques: list(800, 800),
    };
    const terminal = Math.sqrt(800 / 0.5);
    const exact = terminal * Math.tanh((800 * 12) / (1500 * terminal));
    expect(ask(SPEED_AFTER, 12, car)).toBeCloseTo(exact, 9);
  });
});

describe('a run', () => {
  test('is held at the limit of the last gear to the end of its minute', () => {
    const car = { turns: list(10), masses: list(1000) };
    expect(ask(SPEED_AFTER, 60, car)).toBe(50);
    expect(ask(DISTANCE_AFTER, 60, car)).toBeCloseTo(625 + 50 * 35, 7);
  });

  test('to a speed and back to its time agrees', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 38, noNaN: true }), (speed) => {
        const car = { rolling: 100, air: 0.4 };
        const time = runOrNothing(() => ask(TIME_TO_SPEED, speed, car));
        if (time !== undefined) expect(ask(SPEED_AFTER, time, car)).toBeCloseTo(speed, 6);
      }),
    );
  });

  test('of a lighter car is never slower', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 600, max: 2000 }),
        fc.integer({ min: 1, max: 500 }),
        (mass, more) => {
          const time = (each: number) =>
            ask(TIME_OVER_DISTANCE, 400, { masses: list(each, each), rolling: 50, air: 0.4 });
          expect(time(mass)).toBeLessThanOrEqual(time(mass + more));
        },
      ),
    );
  });

  test('that the road load holds back from the start goes nowhere', () => {
    expect(ask(SPEED_AFTER, 60, { rolling: 2100 })).toBe(0);
    expect(refused(TIME_OVER_DISTANCE, 1, { rolling: 2100 })).toMatch(/within a minute/);
  });
});

describe('there is no answer', () => {
  test.each([
    ['a speed beyond the gearing', TIME_TO_SPEED, 101, {}, /does not reach this speed/],
    ['a distance of a minute and more', TIME_OVER_DISTANCE, 5000, {}, /does not cover/],
    ['the speed at the end of it', SPEED_OVER_DISTANCE, 5000, {}, /does not cover/],
    ['a time before the start', SPEED_AFTER, -1, {}, /from 0 to 60 s/],
    ['a time after the minute', DISTANCE_AFTER, 60.1, {}, /from 0 to 60 s/],
    ['a gear without a mass', SPEED_AFTER, 1, { masses: list(1000) }, /2 gears need 2 masses/],
    ['a mass of nothing', SPEED_AFTER, 1, { masses: list(1000, 0) }, /a mass is above 0/],
    ['a gear without a shift', SPEED_AFTER, 1, { leaveAt: list(400) }, /or one for all/],
    ['a shift that gives time back', SPEED_AFTER, 1, { shiftTime: -0.1 }, /no less than no time/],
    [
      'gears listed from the top',
      SPEED_AFTER,
      1,
      { turns: list(5, 10) },
      /in order, 1st gear first/,
    ],
  ] as const)('to %s', (_, declaration, asked, other, why) => {
    expect(refused(declaration, asked, other as Partial<typeof CAR>)).toMatch(why);
  });
});

test('a curve that ends before the limit is warned of', () => {
  const car = Object.values({ ...CAR, limit: 600 });
  expect(SPEED_AFTER.outside!(1, ...car, 45)).toMatch(/ends before/);
});

function runOrNothing(run: () => number): number | undefined {
  try {
    return run();
  } catch {
    return undefined;
  }
}
