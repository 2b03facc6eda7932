import { describe, expect, test } from 'vitest';
import { outcomeOf } from '../../src/sheet/solve.ts';
import {
  cellIndex,
  type Entries,
  numberIn,
  numbersIn,
  openNotebooks,
  work,
} from '../support/notebooks.ts';
import { verdicts } from '../support/verdicts.ts';

const BOOK = openNotebooks();
const gearing = (entries: Entries = {}) => work(BOOK, '20-gearing', entries);

/** The worked example by hand, in inches, minutes and turns. */
const DIAMETER = 15 + (2 * 205 * 0.6) / 25.4;
const ROLLED = 3.05 * DIAMETER;
const WHEEL = (70 * 63360) / 60 / ROLLED;
const RATIOS = [3.15, 1.95, 1.35, 1, 0.74];

describe('the worked example', () => {
  const worked = gearing();

  test('comes out as by hand', () => {
    expect(numberIn(worked, 'tyre_diameter', 'in')).toBeCloseTo(DIAMETER, 12);
    expect(numberIn(worked, 'rolling_circumference', 'in')).toBeCloseTo(ROLLED, 12);
    expect(numberIn(worked, 'first_gear_overall', '')).toBeCloseTo(3.15 * 3.25, 12);
    expectAll(
      numbersIn(worked, 'engine_speed_at_cruise', 'rpm'),
      RATIOS.map((ratio) => WHEEL * 3.25 * ratio),
    );
    expectAll(
      numbersIn(worked, 'road_speed_at_redline', 'mph'),
      RATIOS.map((ratio) => (((5500 / 3.25 / ratio) * ROLLED) / 63360) * 60),
    );
    expectAll(
      numbersIn(worked, 'engine_speed_after_upshift', 'rpm'),
      [1.95 / 3.15, 1.35 / 1.95, 1 / 1.35, 0.74].map((step) => 5500 * step),
    );
  });

  test('passes every check of its own', () => {
    expect(verdicts(worked)).toEqual({
      rollout_per_diameter: 'pass',
      largest_step: 'pass',
      first_gear_overall: 'pass',
      top_gear_cruise: 'pass',
    });
  });

  test('promises less when the slip of the converter is left out', () => {
    const saved = numberIn(worked, 'engine_speed_saved', 'rpm');
    expect(saved).toBeCloseTo((WHEEL * 3.25) / 0.96 - WHEEL * 3.25 * 0.74, 9);
    expect(numberIn(worked, 'saved_without_slip', 'rpm')).toBeCloseTo(WHEEL * 3.25 * 0.26, 9);
  });
});

describe('other readings', () => {
  test('a measured roll-out takes the place of the computed one', () => {
    const worked = gearing({ measured_rollout: '9562 mm / 5' });
    expect(numberIn(worked, 'rolling_circumference', 'mm')).toBeCloseTo(1912.4, 10);
    expect(numberIn(worked, 'tyre_diameter', 'in')).toBeCloseTo(DIAMETER, 12);
  });

  test('an emptied roll-out brings the computed one back', () => {
    const worked = gearing({ measured_rollout: '' });
    expect(numberIn(worked, 'rolling_circumference', 'in')).toBeCloseTo(ROLLED, 12);
  });

  test('the roll-out of two turns taken for one is caught by its check', () => {
    expect(verdicts(gearing({ measured_rollout: '3825 mm' })).rollout_per_diameter).toBe('fail');
  });

  test('ratios may be listed from top gear down to 1st', () => {
    const upward = gearing({ gear_ratios: '[0.74, 1.00, 1.35, 1.95, 3.15]' });
    expectAll(
      numbersIn(upward, 'engine_speed_at_cruise', 'rpm'),
      RATIOS.map((ratio) => WHEEL * 3.25 * ratio),
    );
    expect(numberIn(upward, 'first_gear_overall', '')).toBeCloseTo(3.15 * 3.25, 12);
  });

  test.each([
    ['Old three-speed automatic', 3],
    ['Close five-speed', 5],
    ['Six-speed', 6],
  ])('the set "%s" has %i gears and one shift fewer', (set, gears) => {
    const worked = gearing({ gear_ratios: set });
    expect(numbersIn(worked, 'road_speed_at_redline', 'mph')).toHaveLength(gears);
    expect(numbersIn(worked, 'engine_speed_after_upshift', 'rpm')).toHaveLength(gears - 1);
  });

  test('an axle ratio is typed as it was counted', () => {
    const worked = gearing({ axle_ratio: '32 1/2 / 10', gear_ratios: '[3.00, 1.00]' });
    expect(numberIn(worked, 'first_gear_overall', '')).toBeCloseTo(9.75, 12);
  });

  test('a cruising speed in km/h is the same speed', () => {
    const worked = gearing({ cruise_speed: '112.65408 km/h' });
    expect(numberIn(worked, 'top_gear_cruise', 'rpm')).toBeCloseTo(WHEEL * 3.25 * 0.74, 9);
  });

  test('a taller axle lowers every gear alike', () => {
    const [before, after] = [gearing({ axle_ratio: '4' }), gearing({ axle_ratio: '3' })];
    const taller = numbersIn(after, 'engine_speed_at_cruise', 'rpm');
    const shorter = numbersIn(before, 'engine_speed_at_cruise', 'rpm');
    expectAll(
      taller.map((speed, i) => speed / shorter[i]!),
      RATIOS.map(() => 0.75),
    );
  });

  test('held to the redline, each gear runs until it reaches it', () => {
    const limits = numbersIn(gearing(), 'road_speed_at_redline', 'mph');
    const below = gearing({ cruise_speed: `${limits[1]! - 0.01}` });
    const beyond = gearing({ cruise_speed: `${limits[1]! + 0.01}` });
    expect(numberIn(below, 'engine_speed_in_run', 'rpm')).toBeCloseTo(5499, -1);
    expect(numberIn(beyond, 'engine_speed_in_run', 'rpm')).toBeCloseTo((5500 * 1.35) / 1.95, -1);
  });
});

describe('entries that cannot be', () => {
  test('a size without an aspect ratio leaves the tyre waiting for it', () => {
    const worked = gearing({ aspect_ratio: '' });
    const tyre = outcomeOf(
      worked.book,
      worked.frame,
      cellIndex(BOOK, '20-gearing', 'tyre_diameter'),
    );
    expect(tyre).toMatchObject({ state: 'waiting', problem: { waitsFor: 'aspect_ratio' } });
  });

  test('a measured roll-out does without the size', () => {
    const worked = gearing({ aspect_ratio: '', measured_rollout: '1912 mm' });
    expect(numbersIn(worked, 'engine_speed_at_cruise', 'rpm')).toHaveLength(5);
  });

  test('an axle ratio of 0 spoils the road speed and nothing of the tyre', () => {
    const worked = gearing({ axle_ratio: '0' });
    const road = outcomeOf(
      worked.book,
      worked.frame,
      cellIndex(BOOK, '20-gearing', 'road_speed_at_redline'),
    );
    expect(road).toMatchObject({ state: 'failed', problem: { code: 'division-by-zero' } });
    expect(numberIn(worked, 'tyre_diameter', 'in')).toBeCloseTo(DIAMETER, 12);
  });

  test('a road above the redline in top gear has no gear left', () => {
    const worked = gearing({ cruise_speed: '400 mph' });
    const run = outcomeOf(
      worked.book,
      worked.frame,
      cellIndex(BOOK, '20-gearing', 'engine_speed_in_run'),
    );
    expect(run.state).toBe('failed');
  });

  test('a box with a single gear has no shift', () => {
    expect(numbersIn(gearing({ gear_ratios: '[1]' }), 'engine_speed_after_upshift', 'rpm')).toEqual(
      [],
    );
  });
});

function expectAll(found: readonly number[], wanted: readonly number[]): void {
  expect(found).toHaveLength(wanted.length);
  found.forEach((number, i) => {
    expect(number).toBeCloseTo(wanted[i]!, 9);
  });
}
