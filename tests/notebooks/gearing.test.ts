import { describe, expect, test } from 'vitest';
import { answerFind } from '../../src/sheet/find/find-given.ts';
import { outcomeOf } from '../../src/sheet/solve.ts';
import { warningsOf } from '../../src/sheet/warnings.ts';
import {
  cellIndex,
  type Entries,
  numberIn,
  numbersIn,
  openNotebooks,
  work,
} from '../support/notebooks.ts';
import { testPractice } from '../support/practice.ts';
import { verdicts } from '../support/verdicts.ts';
import { testWindows } from '../support/windows.ts';

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

  test.each([
    ['rim_diameter', '0'],
    ['aspect_ratio', '0 %'],
    ['tyre_width', '-205 mm'],
  ])('a tyre with %s of %s is worked, and told to be none', (name, entry) => {
    const { book, frame } = gearing({ [name]: entry });
    const tyre = cellIndex(BOOK, '20-gearing', 'tyre_diameter');
    expect(warningsOf(book, frame, tyre)).toEqual([
      'no tyre has such a size; read the sidewall again.',
    ]);
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

describe('pull in each gear', () => {
  const perFoot = (ratio: number) => (3.25 * ratio * 2 * Math.PI) / (ROLLED / 12);

  test('at best torque is torque, less losses, times turns for the road covered', () => {
    expectAll(
      numbersIn(gearing(), 'pull_at_peak', 'lbf'),
      RATIOS.map((ratio) => 165 * 0.93 * perFoot(ratio)),
    );
  });

  test('at cruising speed is read off the curve, and nothing is left of a gear past its redline', () => {
    // 70 mph in 4th is 3190 rpm, between 165 lbf·ft at 3000 and 162 at 3500; in 5th 2361.
    const [fourth, fifth] = [WHEEL * 3.25, WHEEL * 3.25 * 0.74];
    const pulls = numbersIn(gearing(), 'pull_at_cruise', 'lbf');
    expect(pulls.slice(0, 2)).toEqual([0, 0]);
    expect(pulls[3]).toBeCloseTo((165 - ((fourth - 3000) / 500) * 3) * 0.93 * perFoot(1), 6);
    expect(pulls[4]).toBeCloseTo((152 + ((fifth - 2000) / 500) * 9) * 0.93 * perFoot(0.74), 6);
  });

  test('is 3 % too small with the circumference of a tyre in a rack', () => {
    const racked = gearing({ measured_rollout: `${Math.PI * DIAMETER} in` });
    expectAll(
      numbersIn(racked, 'pull_at_peak', 'lbf').map((pull) => pull * Math.PI),
      numbersIn(gearing(), 'pull_at_peak', 'lbf').map((pull) => pull * 3.05),
    );
    expect(verdicts(racked).rollout_per_diameter).toBe('fail');
  });

  test('rises in step with the axle', () => {
    const [short, tall] = [gearing({ axle_ratio: '4' }), gearing({ axle_ratio: '2' })];
    expectAll(
      numbersIn(short, 'pull_at_peak', 'lbf'),
      numbersIn(tall, 'pull_at_peak', 'lbf').map((pull) => 2 * pull),
    );
  });
});

describe('mistakes that people make', () => {
  test('overdrive turns the shaft faster than the engine', () => {
    expect(numberIn(gearing(), 'fastest_shaft', 'rpm')).toBeCloseTo(5500 / 0.74, 9);
    const direct = gearing({ gear_ratios: '[3.15, 1.95, 1.35, 1.00]' });
    expect(numberIn(direct, 'fastest_shaft', 'rpm')).toBeCloseTo(5500, 9);
  });

  test('a gear of one to one that is not the top gear is not cruised in', () => {
    const speeds = numbersIn(gearing(), 'engine_speed_at_cruise', 'rpm');
    expect(numberIn(gearing(), 'top_gear_cruise', 'rpm')).toBe(speeds[4]);
    expect(speeds[3]! / speeds[4]!).toBeCloseTo(1 / 0.74, 9);
  });

  test('an old gearbox listed low to high still has its smallest ratio for top gear', () => {
    const upward = gearing({ old_ratios: '[1.00, 1.50, 2.40]' });
    expect(numberIn(upward, 'old_top_gear', '')).toBe(1);
  });

  test('thousandths typed for the tyre width in millimetres are thousandths', () => {
    const worked = gearing({ tyre_width: '8071 thou' });
    expect(numberIn(worked, 'tyre_width', 'mm')).toBeCloseTo(205.0034, 9);
  });
});

test('the axle for a wanted cruise is found, and the nearest that can be had', () => {
  const worked = gearing();
  const find = BOOK.finds.find(
    ({ statement }) => statement.label === 'Axle for the wanted cruise',
  )!;
  const found = answerFind(BOOK, worked.frame, '20-gearing', find.linked!)!;
  expect(found.solutions).toHaveLength(1);
  expect(found.solutions[0]!.from).toBeCloseTo(2200 / WHEEL / 0.74, 9);
  expect(found.stocked[0]!.given).toBeCloseTo(3.08, 12);
});

testWindows(BOOK, '20-gearing', [
  ['rollout_per_diameter', 'below', { measured_rollout: '1800 mm' }, 'soft, worn or cross-ply'],
  ['rollout_per_diameter', 'above', { measured_rollout: '1960 mm' }, 'another size fitted'],
  ['largest_step', 'above', { gear_ratios: '[3.15, 1.75, 1.00]' }, 'a hole in the set'],
  ['first_gear_overall', 'below', { axle_ratio: '2.5' }, 'slips long at every start'],
  ['first_gear_overall', 'above', { axle_ratio: '3.73' }, 'wants 2nd before'],
  ['top_gear_cruise', 'below', { cruise_speed: '55' }, 'engine may labour'],
  ['top_gear_cruise', 'above', { axle_ratio: '4.30' }, 'Busy, and thirsty'],
]);

testPractice(BOOK, '20-gearing', [
  ['Engine speed at a cruise', 'by π'],
  ['Engine speed at a cruise', 'sidewall counts twice'],
  ['Engine speed at a cruise', 'That is the driveshaft'],
  ['Engine speed at a cruise', 'gear divides there'],
  ['Engine speed at a cruise', 'axle is left out'],
  ['The slip of the converter', 'slip is left out'],
  ['The slip of the converter', 'not slower'],
  ['The slip of the converter', 'share of the engine speed'],
  ['The slip of the converter', 'by π'],
]);

function expectAll(found: readonly number[], wanted: readonly number[]): void {
  expect(found).toHaveLength(wanted.length);
  found.forEach((number, i) => {
    expect(number).toBeCloseTo(wanted[i]!, 9);
  });
}
