import { describe, expect, test } from 'vitest';
import { answerFind } from '../../src/sheet/find/find-given.ts';
import { outcomeOf } from '../../src/sheet/solve.ts';
import { spreadOf } from '../../src/sheet/spread/spread.ts';
import {
  cellIndex,
  type Entries,
  numberIn,
  numbersIn,
  openNotebooks,
  type Worked,
  work,
} from '../support/notebooks.ts';
import { verdicts } from '../support/verdicts.ts';
import { testWindows } from '../support/windows.ts';

const BOOK = openNotebooks();
const SHEET = '30-torque-path';
const CAR = '10-the-car-and-the-job';
const GEARS = '20-gearing';
const torque = (entries: Entries = {}) => work(BOOK, SHEET, entries);

const FOOT = 304.8;
const G = 32.17404855643044;
/** In a kilowatt second. */
const FOOT_POUNDS = 1000 / (4.4482216152605 * 0.3048);
const RATIOS = [3.15, 1.95, 1.35, 1, 0.74];
/** Feet covered in a turn of the wheel, then in a radian: the rolling radius. */
const ROLLED = (3.05 * (15 + (2 * 205 * 0.6) / 25.4)) / 12;
const RADIUS = ROLLED / (2 * Math.PI);
const GRIP = (0.8 * 0.47 * 3200) / (1 - (0.8 * 22) / 104);

/** Clutch torque in lbf·ft from pounds and millimetres, bedded in: at half the sum of the radii. */
const byWear = (faces: number, friction: number, clamp: number, outer = 240, inner = 160) =>
  (faces * friction * clamp * (outer + inner)) / 4 / FOOT;

/** The same, pressed alike all over: two thirds of the cubes of the radii over their squares. */
const byPressure = (faces: number, friction: number, clamp: number, outer = 240, inner = 160) => {
  const [o, i] = [outer / 2, inner / 2];
  return (faces * friction * clamp * (2 / 3) * (o ** 3 - i ** 3)) / (o ** 2 - i ** 2) / FOOT;
};

describe('the clutch of the worked example', () => {
  const worked = torque();

  test('holds by hand: new and cool the most, hot and worn the least', () => {
    expect(numberIn(worked, 'clutch_cold', 'lbf·ft')).toBeCloseTo(byPressure(2, 0.3, 1400), 9);
    expect(numberIn(worked, 'clutch_bedded', 'lbf·ft')).toBeCloseTo(byWear(2, 0.3, 1400), 9);
    expect(numberIn(worked, 'clutch_capacity', 'lbf·ft')).toBeCloseTo(byWear(2, 0.25, 1300), 9);
  });

  test('has its reserve over the peak, and the cover as it came has none', () => {
    expect(numberIn(worked, 'reserve', '')).toBeCloseTo(byWear(2, 0.25, 1300) / 165, 9);
    expect(numberIn(worked, 'reserve_as_it_came', '')).toBeCloseTo(byWear(2, 0.25, 950) / 165, 9);
    expect(verdicts(worked)).toMatchObject({ reserve: 'pass', reserve_as_it_came: 'fail' });
  });

  test('presses its lining hardest at the inner edge, and the pressures add up to the clamp', () => {
    const clamp = 1400;
    const [outer, inner] = [240 / 25.4, 160 / 25.4];
    const edge = clamp / ((Math.PI * inner * (outer - inner)) / 2);
    expect(numberIn(worked, 'edge_pressure', 'psi')).toBeCloseTo(edge, 9);
    expect(numberIn(worked, 'mean_pressure', 'psi')).toBeCloseTo(
      clamp / ((Math.PI / 4) * (outer ** 2 - inner ** 2)),
      9,
    );
  });

  test('knows how sure it is: a doubt of 8 % in the friction is one of 8 % in what it holds', () => {
    const [spread] = spreadOf(BOOK, worked.frame, cellIndex(BOOK, SHEET, 'clutch_capacity'));
    const { value, worst } = spread!;
    expect(worst.to / value - 1).toBeCloseTo(0.08, 9);
    expect(1 - worst.from / value).toBeCloseTo(0.08, 9);
  });
});

describe('a clutch inner diameter', () => {
  const torqueOf = (inner: number, outer = 240) =>
    // faces × friction × π p d (D² − d²) / 8, in lbf and inches, then feet
    (2 * 0.25 * Math.PI * 50 * (inner / 25.4) * ((outer / 25.4) ** 2 - (inner / 25.4) ** 2)) /
    8 /
    12;

  test('has two solutions, one each side of the best, and both carry what is wanted', () => {
    const worked = torque();
    const [wide, narrow] = numbersIn(worked, 'inner_choices', 'mm') as [number, number];
    const best = numberIn(worked, 'best_inner', 'mm');
    expect(best).toBeCloseTo(240 / Math.sqrt(3), 9);
    expect(wide).toBeLessThan(best);
    expect(narrow).toBeGreaterThan(best);
    for (const inner of [wide, narrow]) expect(torqueOf(inner)).toBeCloseTo(1.25 * 165, 6);
  });

  test('is found twice by search as well', () => {
    const { frame } = torque();
    const find = BOOK.finds.find(({ statement }) => statement.label === 'Inner diameter')!;
    const found = answerFind(BOOK, frame, SHEET, find.linked!)!;
    const choices = numbersIn(torque(), 'inner_choices', 'mm');
    expect(found.solutions.map(({ from }) => from * 1000)).toEqual(
      choices.map((each) => expect.closeTo(each, 6)),
    );
  });

  test('takes a lighter spring for the narrow lining', () => {
    const [wide, narrow] = numbersIn(torque(), 'clamp_choices', 'lbf') as [number, number];
    expect(narrow).toBeLessThan(wide);
  });

  test('is one where the lining carries just what is wanted, and none beyond', () => {
    const most = numberIn(torque(), 'most_at_limit', 'lbf·ft') / 165;
    const [wide, narrow] = numbersIn(torque({ wanted_reserve: `${most}` }), 'inner_choices', 'mm');
    expect(wide! / narrow!).toBeCloseTo(1, 5);
    const beyond = torque({ wanted_reserve: `${most * 1.01}` });
    expect(outcomeOf(BOOK, beyond.frame, cellIndex(BOOK, SHEET, 'inner_choices'))).toMatchObject({
      state: 'failed',
      problem: { message: expect.stringMatching(/no inner diameter will do/) },
    });
  });
});

describe('through the gears', () => {
  const worked = torque();

  test('the ratios multiply, station by station', () => {
    numbersIn(worked, 'shaft_torque', 'lbf·ft').forEach((each, i) => {
      expect(each).toBeCloseTo(165 * RATIOS[i]!, 9);
    });
    numbersIn(worked, 'wheel_torque', 'lbf·ft').forEach((each, i) => {
      expect(each).toBeCloseTo(165 * RATIOS[i]! * 3.25, 9);
    });
  });

  test('the tyres let go in 1st, at their grip times the rolling radius', () => {
    const limit = GRIP * RADIUS;
    expect(numberIn(worked, 'tyre_limit', 'lbf·ft')).toBeCloseTo(limit, 6);
    expect(numberIn(worked, 'tyre_limit_at_shaft', 'lbf·ft')).toBeCloseTo(limit / 3.25, 6);
    const loads = numbersIn(worked, 'shaft_load', 'lbf·ft');
    expect(loads[0]).toBeCloseTo(limit / 3.25, 6);
    loads.slice(1).forEach((load, i) => {
      expect(load).toBeCloseTo(165 * RATIOS[i + 1]!, 9);
    });
    expect(numbersIn(worked, 'clutch_load', 'lbf·ft')[0]).toBeCloseTo(limit / 3.25 / 3.15, 6);
    expect(numbersIn(worked, 'wheel_load', 'lbf·ft')[0]).toBeCloseTo(limit, 6);
  });

  test('the tube is twisted by 16 T D over π (D⁴ − d⁴)', () => {
    const load = numbersIn(worked, 'shaft_load', 'lbf·ft')[0]! * 12;
    const stress = (16 * load * 3) / (Math.PI * (3 ** 4 - 2.834 ** 4));
    expect(numbersIn(worked, 'tube_stress', 'psi')[0]).toBeCloseTo(stress, 6);
    expect(numbersIn(worked, 'stress_at_bore', 'psi')[0]).toBeCloseTo((stress * 2.834) / 3, 6);
  });

  test('the weakest link is the axle in 1st and the gearbox above it', () => {
    expect(textsIn(worked, 'weakest')).toEqual([
      'axle',
      'gearbox',
      'gearbox',
      'gearbox',
      'gearbox',
    ]);
    const shares = numbersIn(worked, 'weakest_share', '%');
    expect(shares[0]).toBeCloseTo((100 * GRIP * RADIUS) / 1950, 6);
    expect(shares[1]).toBeCloseTo((100 * 165) / 200, 9);
  });

  test('a dropped clutch passes more than the gearbox is rated for, in the gears that grip', () => {
    const most = byPressure(2, 0.3, 1400);
    expect(numberIn(worked, 'dropped_over_rating', '')).toBeCloseTo(most / 200, 9);
    expect(numbersIn(worked, 'dropped_at_shaft', 'lbf·ft')[0]).toBeCloseTo(
      (GRIP * RADIUS) / 3.25,
      6,
    );
    expect(numbersIn(worked, 'dropped_at_shaft', 'lbf·ft')[4]).toBeCloseTo(most * 0.74, 9);
  });

  test('a start costs heat by the square of the step, engine held', () => {
    const omega = (1800 * 2 * Math.PI) / 60;
    const inertia = (3200 / G) * (RADIUS / (3.25 * 3.15)) ** 2;
    const heat = (inertia * omega ** 2) / 2 / FOOT_POUNDS;
    expect(numbersIn(worked, 'held_heat', 'kW*s')[0]).toBeCloseTo(heat, 9);
    expect(numbersIn(worked, 'heat_against_first', '')[1]).toBeCloseTo((3.15 / 1.95) ** 2, 9);
    const own = 5 / G;
    const shared = (((own * inertia) / (own + inertia)) * (omega ** 2 / 2)) / FOOT_POUNDS;
    expect(numbersIn(worked, 'start_heat', 'kW*s')[0]).toBeCloseTo(shared, 9);
    expect(numbersIn(worked, 'start_end_speed', 'rpm')[0]).toBeCloseTo(
      (1800 * own) / (own + inertia),
      9,
    );
  });
});

describe('other readings', () => {
  test('a car on ice: the tyres relieve everything, in every gear', () => {
    const worked = torque({ '25-what-it-will-feel-like/friction': '0.2' });
    const limit = ((0.2 * 0.47 * 3200) / (1 - (0.2 * 22) / 104)) * RADIUS;
    const loads = numbersIn(worked, 'wheel_load', 'lbf·ft');
    loads.forEach((load, i) => {
      expect(load).toBeCloseTo(Math.min(limit, 165 * RATIOS[i]! * 3.25), 6);
    });
    expect(numbersIn(worked, 'tyre_share', '').filter((share) => share > 1)).toHaveLength(5);
  });

  test('a twin plate of sintered metal, in kilonewtons and millimetres', () => {
    const worked = torque({
      friction_faces: '4',
      friction_hot: '0.36',
      friction_cold: '0.40',
      lining_outer: '184 mm',
      lining_inner: '120 mm',
      new_cover: 'Heaviest',
    });
    const newtons = (4 * 0.36 * 1700 * 4.4482216152605 * (184 + 120)) / 4 / 1000;
    expect(numberIn(worked, 'clutch_capacity', 'N·m')).toBeCloseTo(newtons, 9);
    expect(verdicts(worked)).toMatchObject({ reserve: 'fail', edge_pressure: 'fail' });
  });

  test('a large engine behind a gearbox made for a small one', () => {
    const worked = torque({
      [`${CAR}/stated_torques`]: '[240, 280, 300, 315, 320, 318, 310, 300, 285, 270]',
      [`${GEARS}/gear_ratios`]: 'Close five-speed',
      [`${GEARS}/axle_ratio`]: '2.76',
    });
    expect(numberIn(worked, 'gearbox_margin', '')).toBeCloseTo(200 / 320, 9);
    expect(verdicts(worked)).toMatchObject({ gearbox_margin: 'fail', weakest_share: 'fail' });
    expect(textsIn(worked, 'weakest')[4]).toBe('gearbox');
  });
});

describe('mistakes that people make', () => {
  test('the radius of a tyre in a rack is 3 % more than it rolls with', () => {
    const diameter = 15 + (2 * 205 * 0.6) / 25.4;
    const racked = torque({ [`${GEARS}/measured_rollout`]: `${Math.PI * diameter} in` });
    const wrong = numberIn(racked, 'tyre_limit', 'lbf·ft');
    expect(wrong / numberIn(torque(), 'tyre_limit', 'lbf·ft')).toBeCloseTo(Math.PI / 3.05, 9);
    expect(
      verdicts(work(BOOK, GEARS, { measured_rollout: `${Math.PI * diameter} in` }))
        .rollout_per_diameter,
    ).toBe('fail');
  });

  test('ratios listed low to high give each gear its own torque', () => {
    const upward = torque({ [`${GEARS}/gear_ratios`]: '[0.74, 1.00, 1.35, 1.95, 3.15]' });
    expect(numbersIn(upward, 'wheel_load', 'lbf·ft')).toEqual(
      numbersIn(torque(), 'wheel_load', 'lbf·ft'),
    );
    expect(textsIn(upward, 'gear_name')).toEqual(['1st', '2nd', '3rd', '4th', '5th']);
  });

  test('overdrive turns the shaft faster than the engine, and so with less torque', () => {
    expect(numberIn(work(BOOK, GEARS), 'fastest_shaft', 'rpm')).toBeCloseTo(5500 / 0.74, 9);
    expect(numbersIn(torque(), 'shaft_torque', 'lbf·ft')[4]).toBeCloseTo(165 * 0.74, 9);
  });

  test('a gear of one to one passes the engine’s torque as it is, wherever it stands', () => {
    const last = torque({ [`${GEARS}/gear_ratios`]: '[3.15, 1.95, 1.35, 1.00]' });
    expect(numbersIn(last, 'shaft_torque', 'lbf·ft')[3]).toBeCloseTo(165, 9);
    expect(numbersIn(torque(), 'shaft_torque', 'lbf·ft')[3]).toBeCloseTo(165, 9);
  });

  test('a gross figure makes the clutch a fifth too strong', () => {
    const gross = torque({ [`${CAR}/rating`]: 'gross' });
    expect(numberIn(torque(), 'least_torque', 'lbf·ft')).toBeCloseTo(1.25 * 165, 9);
    expect(numberIn(gross, 'least_torque', 'lbf·ft')).toBeCloseTo(0.8 * 1.25 * 165, 9);
    expect(textIn(gross, 'rating_method')).toBe('gross');
  });

  test('thousandths typed in a field of millimetres are thousandths', () => {
    const worked = torque({ lining_outer: '9449 thou', lining_inner: '6 5/16 in' });
    expect(numberIn(worked, 'lining_outer', 'mm')).toBeCloseTo(9449 * 0.0254, 9);
    expect(numberIn(worked, 'clutch_capacity', 'lbf·ft')).toBeCloseTo(
      byWear(2, 0.25, 1300, 9449 * 0.0254, 6.3125 * 25.4),
      9,
    );
  });

  test('one face for two halves what it holds, and radii for diameters likewise', () => {
    const right = numberIn(torque(), 'clutch_capacity', 'lbf·ft');
    expect(numberIn(torque({ friction_faces: '1' }), 'clutch_capacity', 'lbf·ft')).toBeCloseTo(
      right / 2,
      9,
    );
    const radii = torque({ lining_outer: '120', lining_inner: '80' });
    expect(numberIn(radii, 'clutch_capacity', 'lbf·ft')).toBeCloseTo(right / 2, 9);
  });

  test('the diameters the wrong way round are refused, and only what needs them waits', () => {
    const worked = torque({ lining_outer: '160', lining_inner: '240' });
    expect(outcomeOf(BOOK, worked.frame, cellIndex(BOOK, SHEET, 'clutch_capacity'))).toMatchObject({
      state: 'failed',
      problem: { message: expect.stringMatching(/smaller than the outer/) },
    });
    expect(numbersIn(worked, 'wheel_load', 'lbf·ft')).toHaveLength(5);
  });

  test('the clamp of a worn disc counts, whichever of the two is the lower', () => {
    const heaviest = torque({ new_cover: 'Heaviest' });
    expect(numberIn(heaviest, 'clutch_capacity', 'lbf·ft')).toBeCloseTo(byWear(2, 0.25, 1700), 9);
  });
});

testWindows(BOOK, SHEET, [
  ['reserve_as_it_came', 'below', {}, 'slip on the first long hill'],
  ['reserve_as_it_came', 'above', { old_cover: 'Heaviest' }, 'every bit of it is in the pedal'],
  ['reserve', 'below', { friction_hot: '0.20' }, 'It will slip when hot'],
  ['reserve', 'above', { new_cover: 'Heaviest' }, 'the pedal is heavy'],
  ['edge_pressure', 'above', { lining_limit: '40' }, 'harder than its maker allows'],
  ['gearbox_margin', 'below', { gearbox_rating: '175' }, 'past its rating in every gear'],
  ['axle_margin', 'below', { axle_rating: '1400' }, 'More than the axle was made for'],
  ['weakest_share', 'above', { gearbox_rating: '160' }, 'past what it bears'],
]);

function valueIn({ frame }: Worked, name: string): unknown {
  const outcome = outcomeOf(BOOK, frame, cellIndex(BOOK, SHEET, name));
  return outcome.state === 'value' ? outcome.value : outcome.state;
}

function textIn(worked: Worked, name: string): string {
  return String(valueIn(worked, name));
}

function textsIn(worked: Worked, name: string): readonly string[] {
  return valueIn(worked, name) as readonly string[];
}
