import { describe, expect, test } from 'vitest';
import { plainBlanks } from '../../src/cli/plain-blanks.ts';
import { recordChecks } from '../../src/cli/record-checks.ts';
import { answerFind } from '../../src/sheet/find/find-given.ts';
import { outcomeOf } from '../../src/sheet/solve.ts';
import { sweepChart } from '../../src/sheet/sweep.ts';
import {
  cellIndex,
  type Entries,
  enter,
  numberIn,
  numbersIn,
  openNotebooks,
  work,
} from '../support/notebooks.ts';
import { testPractice } from '../support/practice.ts';
import { verdicts } from '../support/verdicts.ts';
import { testWindows } from '../support/windows.ts';

const BOOK = openNotebooks();
const SHEET = '120-speedometer-and-electrics';
const car = (entries: Entries = {}) => work(BOOK, SHEET, entries);

const MILE = 63360;
const DIAMETER = 15 + (2 * 205 * 0.6) / 25.4;
const WHEEL_TURNS = MILE / (3.05 * DIAMETER);
const SHAFT_TURNS = 3.25 * WHEEL_TURNS;
const MAKER_DIAMETER = 14 + (2 * 175 * 0.82) / 25.4;

describe('the worked example', () => {
  const worked = car();
  const asItCameIn = (SHAFT_TURNS * 8) / 21 / 1000;
  const needle = 60 / 57.2 / asItCameIn;
  const geared = (SHAFT_TURNS * 7) / 19 / 1000;

  test('was made to read a little fast, and reads faster on smaller tyres, by hand', () => {
    const made = (((3.25 * MILE) / (3.05 * MAKER_DIAMETER)) * 8) / 21 / 1000;
    expect(numberIn(worked, 'maker_error', '')).toBeCloseTo(made - 1, 12);
    expect(numberIn(worked, 'came_in_error', '')).toBeCloseTo(asItCameIn - 1, 12);
    expect(numberIn(worked, 'since_then', '')).toBeCloseTo(MAKER_DIAMETER / DIAMETER - 1, 12);
  });

  test('tells what the needle adds from what the gears do', () => {
    expect(numberIn(worked, 'shown_error', '')).toBeCloseTo(60 / 57.2 - 1, 12);
    expect(numberIn(worked, 'mile_error', '')).toBeCloseTo((60 * 62.9) / 3600 - 1, 12);
    expect(numberIn(worked, 'needle_adds', '')).toBeCloseTo(needle - 1, 12);
    expect(numberIn(worked, 'odometer_differs', '')).toBeCloseTo(1.04 / asItCameIn - 1, 12);
  });

  test('wants a driven gear of a little over 19 teeth, and takes 19', () => {
    expect(numberIn(worked, 'exact_teeth', '')).toBeCloseTo((7 * SHAFT_TURNS) / 1000, 12);
    expect(numberIn(worked, 'nearest_below', '')).toBe(19);
    expect(numberIn(worked, 'nearest_above', '')).toBe(20);
    expect(numberIn(worked, 'gear_error', '')).toBeCloseTo(geared - 1, 12);
    expect(numberIn(worked, 'reading_error', '')).toBeCloseTo(geared * needle - 1, 12);
    expect(numberIn(worked, 'slow_with_more', '')).toBeCloseTo(
      1 - (7 * SHAFT_TURNS) / 20 / 1000,
      12,
    );
  });

  test('counts miles by the gears alone, whatever the needle does', () => {
    expect(numberIn(worked, 'odometer_error', '')).toBeCloseTo(geared - 1, 12);
    expect(numberIn(worked, 'odometer_per_thousand', 'mi')).toBeCloseTo(1000 * (geared - 1), 9);
    const mended = car({ shown_steady: '58' });
    expect(numberIn(mended, 'odometer_error', '')).toBeCloseTo(geared - 1, 12);
    expect(numberIn(mended, 'reading_error', '')).not.toBeCloseTo(geared * needle - 1, 3);
  });

  test('counts pulses in a mile and in a kilometre', () => {
    expect(numberIn(worked, 'pulses_per_mile', '')).toBeCloseTo(8 * SHAFT_TURNS, 8);
    expect(numberIn(worked, 'pulses_per_km', '')).toBeCloseTo((8 * SHAFT_TURNS) / 1.609344, 8);
    expect(numberIn(worked, 'pulse_error', '')).toBeCloseTo((8 * SHAFT_TURNS) / 21700 - 1, 12);
  });

  test('stands where the regulation allows, at the speed looked at and at those it tries', () => {
    const error = geared * needle - 1;
    expect(numberIn(worked, 'shown_less_true', 'mph')).toBeCloseTo(70 * error, 10);
    expect(numberIn(worked, 'most_less_true', 'km/h')).toBeCloseTo(7 * 1.609344 + 4, 10);
    const [slow, middle, fast] = numbersIn(worked, 'room_to_fast', 'km/h');
    expect(slow).toBeCloseTo(8 - 40 * error, 10);
    expect(middle).toBeCloseTo(12 - 80 * error, 10);
    expect(fast).toBeCloseTo(16 - 120 * error, 10);
  });

  test('passes every check of its own', () => {
    expect(new Set(Object.values(verdicts(worked)))).toEqual(new Set(['pass']));
  });
});

describe('three other cars', () => {
  test('a lorry axle and a dial of 1200', () => {
    const worked = car({
      '20-gearing/axle_ratio': '41 / 8',
      '20-gearing/measured_rollout': '12650 mm / 5',
      dial_turns: '1200 a mile',
      drive_teeth: '6',
      driven_teeth: '16',
    });
    const exact = (6 * 5.125 * 1609344) / 2530 / 1200;
    expect(numberIn(worked, 'exact_teeth', '')).toBeCloseTo(exact, 10);
    expect(numberIn(worked, 'gear_error', '')).toBeCloseTo(exact / 16 - 1, 12);
  });

  test('a dial by the kilometre on a small full-profile tyre', () => {
    const worked = car({
      '20-gearing/tyre_width': '155',
      '20-gearing/aspect_ratio': '82',
      '20-gearing/rim_diameter': '13',
      '20-gearing/axle_ratio': '4.11',
      dial_turns: '624 rev/km',
      drive_teeth: '5',
      driven_teeth: '20 teeth',
    });
    const rolled = (3.05 * (13 * 25.4 + 2 * 155 * 0.82)) / 1e6;
    expect(numberIn(worked, 'exact_teeth', '')).toBeCloseTo((5 * 4.11) / rolled / 624, 10);
  });

  test('an axle changed with the gearbox: what it came in with is entered beside it', () => {
    const worked = car({
      '20-gearing/axle_ratio': '3.55',
      came_in_axle: '3.25',
      came_in_rollout: '1950 mm',
    });
    expect(numberIn(worked, 'came_in_shaft_turns', 'rev/mi')).toBeCloseTo(3.25 * 825.304615, 4);
    expect(numberIn(worked, 'exact_teeth', '')).toBeCloseTo((7 * 3.55 * WHEEL_TURNS) / 1000, 10);
  });
});

describe('fast or slow', () => {
  const reads = (entries: Entries) => numberIn(car(entries), 'gear_error', '');

  test('a smaller tyre makes it read fast, a larger one slow', () => {
    expect(reads({ '20-gearing/rim_diameter': '14' })).toBeGreaterThan(reads({}));
    expect(reads({ '20-gearing/rim_diameter': '16' })).toBeLessThan(0);
  });

  test('a shorter axle makes it read fast', () => {
    expect(reads({ '20-gearing/axle_ratio': '3.73' })).toBeGreaterThan(0.15);
  });

  test('a driven gear with one tooth more makes it read slow by a twentieth', () => {
    expect(reads({ driven_teeth: '20 teeth' }) + 1).toBeCloseTo(((reads({}) + 1) * 19) / 20, 12);
  });

  test('more pulses than the dash was told make it read fast', () => {
    expect(numberIn(car({ dash_pulses: '20000' }), 'pulse_error', '')).toBeGreaterThan(0.09);
  });

  test('another tyre later is judged with the gear that is fitted', () => {
    const worked = car({ trial_diameter: '26.4', trial_axle: '3.25' });
    const turns = (7 * 3.25 * MILE) / (3.05 * 26.4) / 1000;
    expect(numberIn(worked, 'trial_error', '')).toBeCloseTo(turns / 19 - 1, 12);
    const cell = BOOK.cells[cellIndex(BOOK, SHEET, 'trial_error')]!;
    expect(cell).toMatchObject({
      statement: { signs: { negative: expect.stringContaining('Slow') } },
    });
  });
});

describe('the mistakes of the trade', () => {
  test('worked by π the gear would have half a tooth too few, and read three per cent further off', () => {
    const worked = car();
    const byPi = numberIn(worked, 'teeth_by_pi', '');
    const exact = numberIn(worked, 'exact_teeth', '');
    expect(byPi / exact).toBeCloseTo(3.05 / Math.PI, 12);
    expect(exact - byPi).toBeGreaterThan(0.5);
  });

  test('the nearer gear is the wrong one where it reads slow', () => {
    const worked = car({ '20-gearing/axle_ratio': '3.35' });
    const exact = numberIn(worked, 'exact_teeth', '');
    expect(Math.round(exact)).toBe(20);
    expect(numberIn(worked, 'nearest_below', '')).toBe(19);
    const nearer = car({ '20-gearing/axle_ratio': '3.35', driven_teeth: '20 teeth' });
    expect(numberIn(nearer, 'gear_error', '')).toBeLessThan(0);
    expect(numberIn(worked, 'gear_error', '')).toBeGreaterThan(0);
  });

  test('a gear off the shelf that is too small for any stock says so and leaves the rest', () => {
    const worked = car({ drive_teeth: '3' });
    const below = outcomeOf(BOOK, worked.frame, cellIndex(BOOK, SHEET, 'nearest_below'));
    expect(below.state).toBe('failed');
    expect(numberIn(worked, 'nearest_above', '')).toBe(16);
    expect(numberIn(worked, 'exact_teeth', '')).toBeCloseTo((3 * SHAFT_TURNS) / 1000, 10);
  });

  test('half a tooth is told to be none', () => {
    const cell = BOOK.cells[cellIndex(BOOK, SHEET, 'cable_turns')]!;
    expect(cell).toMatchObject({
      statement: { valid: { sentence: expect.stringContaining('whole teeth') } },
    });
  });

  test('a length where a speed belongs is refused, and only its own waits', () => {
    const worked = car();
    expect(enter(worked, 'satellite_steady', '57 mi')).toMatchObject({ state: 'failed' });
    const refused = car({ satellite_steady: '57 mi' });
    const error = outcomeOf(BOOK, refused.frame, cellIndex(BOOK, SHEET, 'shown_error'));
    expect(error).toMatchObject({ state: 'waiting', problem: { waitsFor: 'satellite_steady' } });
    expect(numberIn(refused, 'mile_error', '')).toBeCloseTo((60 * 62.9) / 3600 - 1, 12);
  });

  test('a speed in km/h is the same speed', () => {
    const worked = car({ satellite_steady: `${57.2 * 1.609344} km/h` });
    expect(numberIn(worked, 'shown_error', '')).toBeCloseTo(60 / 57.2 - 1, 12);
  });
});

describe('asked backwards', () => {
  const find = BOOK.finds.find(
    ({ statement }) => statement.label === 'Driven gear, needle counted',
  )!;
  const found = answerFind(BOOK, car().frame, SHEET, find.linked!)!;

  test('the gear for a right needle is the exact one times what the needle adds', () => {
    const worked = car();
    const wanted = numberIn(worked, 'exact_teeth', '') * (1 + numberIn(worked, 'needle_adds', ''));
    expect(found.solutions).toHaveLength(1);
    expect(found.solutions[0]!.from).toBeCloseTo(wanted, 6);
  });

  test('the nearest gears on the shelf stand beside it with what each gives', () => {
    expect(found.stocked[0]).toMatchObject({ given: 19 });
    expect(found.stocked[0]!.result).toBeCloseTo(numberIn(car(), 'reading_error', ''), 12);
  });
});

describe('the rule', () => {
  test('of the United Kingdom allows a tenth and 6.25 mph', () => {
    const worked = car({ rule: 'United Kingdom' });
    expect(numberIn(worked, 'most_allowed', 'mph')).toBeCloseTo(77 + 6.25, 10);
    expect(numberIn(worked, 'least_allowed', 'mph')).toBeCloseTo(70, 10);
  });

  test('for lorries in the United States allows 5 mph both ways', () => {
    const worked = car({ rule: 'US lorries and buses', true_speed: '50' });
    expect(numberIn(worked, 'most_less_true', 'mph')).toBeCloseTo(5, 10);
    expect(numberIn(worked, 'least_less_true', 'mph')).toBeCloseTo(-5, 10);
  });

  test('as a chart is two lines that the reading runs between', () => {
    const { statement } = BOOK.charts.find(
      (chart) => chart.statement.title === 'Shown against true speed',
    )!;
    const data = sweepChart(BOOK, car().frame, statement, SHEET, 'metric');
    if ('code' in data) throw new Error(data.message);
    const [shown, , least, most] = data.series;
    shown!.points.forEach(([speed, reading], i) => {
      expect(least!.points[i]![1]).toBeCloseTo(speed, 9);
      expect(most!.points[i]![1]).toBeCloseTo(1.1 * speed + 4, 9);
      expect(reading).toBeGreaterThanOrEqual(least!.points[i]![1]);
      expect(reading).toBeLessThan(most!.points[i]![1]);
    });
  });
});

describe('the starter', () => {
  const joined = { cranks_up_neutral: 'yes', cranks_up_in_gear: 'yes' };

  test('with the two wires joined cranks in gear, and the sheet stops the job', () => {
    const worked = car(joined);
    expect(verdicts(worked)).toMatchObject({
      cranks_up_in_gear: 'fail',
      cranks_up_neutral: 'fail',
      cranks_down_in_gear: 'pass',
    });
  });

  test.each([
    ['Clutch switch', ['no', 'no', 'yes', 'yes']],
    ['Neutral switch', ['yes', 'no', 'yes', 'no']],
    ['Both in series', ['no', 'no', 'yes', 'no']],
  ])('by a %s behaves as its way of wiring must', (way, [neutral, gear, down, both]) => {
    const worked = car({
      way,
      cranks_up_neutral: neutral!,
      cranks_up_in_gear: gear!,
      cranks_down_neutral: down!,
      cranks_down_in_gear: both!,
    });
    expect(new Set(Object.values(verdicts(worked)))).toEqual(new Set(['pass']));
  });

  test('no way of wiring lets it crank in gear with the clutch up', () => {
    for (const way of ['Clutch switch', 'Neutral switch', 'Both in series']) {
      expect(verdicts(car({ way, cranks_up_in_gear: 'yes' })).cranks_up_in_gear).toBe('fail');
    }
  });

  test('its switch goes by the pedal, wherever that frees the clutch', () => {
    const there = numberIn(car(), 'pad_needed', 'in');
    const heavier = car({ '70-release-bearing/lever_ratio': '3.6' });
    expect(numberIn(heavier, 'pad_needed', 'in')).toBeGreaterThan(there);
    expect(verdicts(car({ switch_closes: `${there} in` })).switch_closes).toBe('pass');
  });
});

describe('each verdict is a sentence', () => {
  const told = (entries: Entries, name: string) => {
    const { book, frame } = car(entries);
    return plainBlanks(recordChecks(book, frame, SHEET).find((check) => check.name === name)!.text);
  };

  test('inside the window with what is left', () => {
    expect(told({}, 'reading_error')).toBe('Inside the window. 1.4 % to the nearer limit.');
  });

  test('outside it with by how much and what to do', () => {
    expect(told({ driven_teeth: '20 teeth' }, 'reading_error')).toBe(
      '−3.6 % is 3.6 % less than the least allowed, 0.0 %. It reads slow. The driver goes faster than he sees, and pays for it. One tooth fewer on the driven gear, or a ratio box in the cable.',
    );
  });

  test('of words as the same or not', () => {
    expect(told({}, 'cranks_up_in_gear')).toBe('The same.');
    expect(told({ cranks_up_in_gear: 'yes' }, 'cranks_up_in_gear')).toMatch(
      /^Not the same\. Stop\./,
    );
  });
});

const SLOW = { driven_teeth: '20 teeth' };
const FAST = { driven_teeth: '17 teeth' };

testWindows(BOOK, SHEET, [
  ['ways_differ', 'below', { mile_time: '62.0' }, 'slower than the mile'],
  ['ways_differ', 'above', { mile_time: '64.0' }, 'faster than the mile'],
  ['odometer_differs', 'below', { odometer_ran: '10.2' }, 'fewer turns'],
  ['odometer_differs', 'above', { odometer_ran: '10.6' }, 'more turns'],
  ['needle_adds', 'below', { shown_steady: '58' }, 'lags behind'],
  ['needle_adds', 'above', { shown_steady: '62.5' }, 'runs ahead'],
  ['reading_error', 'below', SLOW, 'reads slow'],
  ['reading_error', 'above', FAST, 'One tooth more'],
  ['count_differs', 'below', { flag_turns: '9.8' }, 'Fewer turns'],
  ['count_differs', 'above', { flag_turns: '10.4' }, 'More turns'],
  ['not_whole', 'above', { pulses_counted: '78' }, 'whole teeth'],
  ['pulse_error', 'below', { dash_pulses: '22000' }, 'lower figure'],
  ['pulse_error', 'above', { dash_pulses: '21000' }, 'higher figure'],
  ['shown_less_true', 'below', SLOW, 'no rule for cars'],
  ['shown_less_true', 'above', { driven_teeth: '16 teeth' }, 'even the rule'],
  ['room_to_slow', 'below', SLOW, 'reads slow'],
  ['room_to_fast', 'below', { driven_teeth: '16 teeth' }, 'too fast'],
  ['current_in_hand', 'below', { switch_rating: '10' }, 'A relay'],
  ['closed_resistance', 'above', { closed_resistance: '0.8' }, 'bad joint'],
  ['cranks_up_in_gear', 'unlike', { cranks_up_in_gear: 'yes' }, 'Stop.'],
  ['cranks_up_neutral', 'unlike', { cranks_up_neutral: 'yes' }, 'bridged'],
  ['cranks_down_neutral', 'unlike', { cranks_down_neutral: 'no' }, 'must crank here'],
  ['cranks_down_in_gear', 'unlike', { cranks_down_in_gear: 'no' }, 'parallel'],
  ['lamps_in_reverse', 'unlike', { lamps_in_reverse: 'no' }, 'Bulb'],
  ['lamps_otherwise', 'unlike', { lamps_otherwise: 'yes' }, 'neutral switch'],
  ['lamps_without_key', 'unlike', { lamps_without_key: 'yes' }, 'flat in the morning'],
  ['switch_closes', 'below', { switch_closes: '5.8' }, 'the car jumps'],
  ['switch_closes', 'above', { switch_closes: '6.4' }, 'stays dead'],
]);

testPractice(BOOK, SHEET, [
  ['The driven gear', 'by π'],
  ['The driven gear', 'left out'],
  ['The driven gear', 'divides there'],
  ['The driven gear', 'wrong way round'],
  ['The driven gear', 'kilometre'],
  ['Fast or slow?', 'true over shown'],
  ['Fast or slow?', 'over what is true'],
  ['Fast or slow?', 'by π'],
  ['Fast or slow?', 'One tooth too many'],
  ['The measured mile', 'over what is true'],
  ['The measured mile', 'miles an hour'],
  ['The measured mile', 'true over shown'],
]);
