import { describe, expect, test } from 'vitest';
import { outcomeOf } from '../../src/sheet/solve.ts';
import { warningsOf } from '../../src/sheet/warnings.ts';
import {
  cellIndex,
  type Entries,
  numberIn,
  numbersIn,
  openNotebooks,
  type Worked,
  work,
} from '../support/notebooks.ts';
import { testPractice } from '../support/practice.ts';
import { verdicts } from '../support/verdicts.ts';
import { testWindows } from '../support/windows.ts';

const BOOK = openNotebooks();
const SHEET = '25-what-it-will-feel-like';
const CAR = '10-the-car-and-the-job';
const GEARS = '20-gearing';
const feel = (entries: Entries = {}) => work(BOOK, SHEET, entries);

/** The worked example in pounds, feet and seconds, as a slide rule would have it. */
const G = 32.17404855643044;
const WEIGHT = 3200;
const MPH = 5280 / 3600;
const TORQUES = [118, 138, 152, 161, 165, 162, 154, 143, 128, 108];
const ROLLED = (3.05 * (15 + (2 * 205 * 0.6) / 25.4)) / 12;
const AIR = (1.204 * 8.6 * 0.3048 ** 3) / 0.45359237 / 2 / G;
const RATIOS = [3.15, 1.95, 1.35, 1, 0.74];
const OLD_RATIOS = [2.4, 1.5, 1];
const GRIP = (0.8 * 0.47 * WEIGHT) / (1 - (0.8 * 22) / 104);
const perFoot = (ratio: number) => (3.25 * ratio * 2 * Math.PI) / ROLLED;
const load = (v: number) => 32 * (1 + v / 147) + AIR * v * v;
const massOf = (ratio: number) => (WEIGHT / G) * (1.04 + 0.0025 * (3.25 * ratio) ** 2);

/** Torque along straight lines; level below the first point. */
function torqueAt(rpm: number): number {
  const place = Math.max(0, rpm / 500 - 2);
  const i = Math.min(8, Math.floor(place));
  return TORQUES[i]! + (place - i) * (TORQUES[i + 1]! - TORQUES[i]!);
}

const rpmAt = (v: number, ratio: number) => (v * perFoot(ratio) * 60) / (2 * Math.PI);

function manualPull(v: number, ratio: number): number {
  return 0.93 * torqueAt(Math.max(2500, rpmAt(v, ratio))) * perFoot(ratio);
}

function automaticPull(v: number, ratio: number): number {
  const rpm = rpmAt(v, ratio) / 0.96;
  const multiple = rpm < 1800 ? 2 - rpm / 1800 : 1;
  return 0.88 * multiple * torqueAt(Math.max(1800, rpm)) * perFoot(ratio);
}

/** A standing start in thousandths of a second, half a step at a time: slow, and without cunning. */
function drive(
  ratios: readonly number[],
  pull: (v: number, ratio: number) => number,
  leaveAt: number,
  shift: number,
): { sprint: number; quarter: number; trap: number } {
  const h = 0.001;
  let [t, v, x, gear, coast, sprint] = [0, 0, 0, 0, 0, 0];
  while (x < 1320) {
    const ratio = ratios[gear]!;
    const force = (speed: number) =>
      (coast > 0 ? 0 : Math.min(GRIP, pull(speed, ratio))) - load(speed);
    const middle = v + ((h / 2) * force(v)) / massOf(ratio);
    v += (h * force(middle)) / massOf(ratio);
    x += h * middle;
    t += h;
    if (coast > 0) coast -= h;
    else if (v >= leaveAt / rpmAt(1, ratio) && gear < ratios.length - 1) {
      gear += 1;
      coast = shift;
    }
    if (sprint === 0 && v >= 60 * MPH) sprint = t;
  }
  return { sprint, quarter: t, trap: v / MPH };
}

describe('the worked example', () => {
  const worked = feel({ shifting: 'at the redline' });

  test('meets the road load by hand', () => {
    expect(numberIn(worked, 'level_load', 'lbf')).toBeCloseTo(load(60 * MPH), 9);
    expect(numberIn(worked, 'power_here', 'hp')).toBeCloseTo((load(60 * MPH) * 60 * MPH) / 550, 9);
    expect(numberIn(worked, 'grip', 'lbf')).toBeCloseTo(GRIP, 9);
    numbersIn(worked, 'mass_in_gear', 'lb').forEach((mass, i) => {
      expect(mass / G).toBeCloseTo(massOf(RATIOS[i]!), 9);
    });
  });

  test('pulls what the engine gives at that speed, in each gear', () => {
    const byHand = RATIOS.map((ratio) => {
      const rpm = rpmAt(60 * MPH, ratio);
      return rpm > 5500 ? 0 : 0.93 * torqueAt(rpm) * perFoot(ratio);
    });
    numbersIn(worked, 'pull_here', 'lbf').forEach((pull, i) => {
      expect(pull).toBeCloseTo(byHand[i]!, 6);
    });
  });

  test('stands still against itself at its top speed', () => {
    const top = numberIn(worked, 'top_speed', 'mph') * MPH;
    expect(0.93 * torqueAt(rpmAt(top, 1)) * perFoot(1)).toBeCloseTo(load(top), 6);
  });

  test('holds on its steepest hill what its pull leaves, grip heeded', () => {
    numbersIn(worked, 'steepest_hill', '').forEach((hill, i) => {
      const slowest = i === 0 ? 0 : 1000;
      const spares = Array.from({ length: 5501 - slowest }, (_, n) => {
        const rpm = slowest + n;
        const v = ((rpm / 60) * 2 * Math.PI) / perFoot(RATIOS[i]!);
        return Math.min(GRIP, 0.93 * torqueAt(rpm) * perFoot(RATIOS[i]!)) - load(v);
      });
      const held = WEIGHT * Math.sin(Math.atan(hill));
      expect(held / Math.max(...spares)).toBeGreaterThan(1 - 1e-9);
      expect(held / Math.max(...spares)).toBeLessThan(1.0001);
    });
  });

  test('runs as a sum in thousandths of a second does', () => {
    const byHand = drive(RATIOS, manualPull, 5500, 0.6);
    expect(numberIn(worked, 'new_sprint', 's')).toBeCloseTo(byHand.sprint, 2);
    expect(numberIn(worked, 'new_quarter', 's')).toBeCloseTo(byHand.quarter, 2);
    expect(numberIn(worked, 'new_trap', 'mph')).toBeCloseTo(byHand.trap, 1);
  });

  test('ran with the old gearbox as the same sum does behind a converter', () => {
    const byHand = drive(OLD_RATIOS, automaticPull, 4800 * 0.96, 0);
    expect(numberIn(worked, 'old_sprint', 's')).toBeCloseTo(byHand.sprint, 2);
    expect(numberIn(worked, 'old_quarter', 's')).toBeCloseTo(byHand.quarter, 2);
    expect(numberIn(worked, 'old_trap', 'mph')).toBeCloseTo(byHand.trap, 1);
  });

  test('passes every check of its own', () => {
    expect(new Set(Object.values(verdicts(feel())))).toEqual(new Set(['pass']));
  });
});

describe('before and after', () => {
  const worked = feel();

  test.each([
    ['cruise_pair', 'old_cruise', 'top_gear_cruise', 'rpm'],
    ['sprint_pair', 'old_sprint', 'new_sprint', 's'],
    ['quarter_pair', 'old_quarter', 'new_quarter', 's'],
    ['trap_pair', 'old_trap', 'new_trap', 'mph'],
    ['top_speed_pair', 'old_top_speed', 'top_speed', 'mph'],
    ['cruise_hill_pair', 'old_cruise_hill', 'new_cruise_hill', '%'],
  ])('stand side by side in %s', (pair, before, after, unit) => {
    expect(numbersIn(worked, pair, unit)).toEqual([
      numberIn(worked, before, unit),
      numberIn(worked, after, unit),
    ]);
  });

  test('stand in one table and in two charts', () => {
    const columns = BOOK.figures.find(({ sheet }) => sheet === SHEET)!.statement.figures;
    expect(columns.map(({ name }) => name.name)).toContain('sprint_pair');
    const drawn = BOOK.charts
      .filter(({ sheet }) => sheet === SHEET)
      .map(({ statement }) => statement.results.map(({ name }) => name));
    expect(drawn).toContainEqual(['pull_before', 'pull_after', 'load_here']);
    expect(drawn).toContainEqual(['speed_before', 'speed_afterwards']);
  });

  test('are the same car with the old ratios, no converter and nothing lost at the shifts', () => {
    const same = feel({
      [`${GEARS}/gear_ratios`]: '[2.40, 1.50, 1.00]',
      [`${GEARS}/converter_slip`]: '0',
      [`${GEARS}/driveline_efficiency`]: '88',
      stall_multiplication: '1',
      stall_speed: '2500',
      old_shift_speed: '5500',
      shifting: 'at the redline',
      shift_time: '0 s',
    });
    const [before, after] = numbersIn(same, 'quarter_pair', 's') as [number, number];
    expect(after).toBeCloseTo(before, 9);
    expect(numberIn(same, 'top_speed_gained', 'mph')).toBeCloseTo(0, 9);
  });

  test('the hill held in top gear at cruise is what pull leaves there', () => {
    const spare = 0.93 * torqueAt(rpmAt(70 * MPH, 0.74)) * perFoot(0.74) - load(70 * MPH);
    const hill = numberIn(worked, 'new_cruise_hill', '');
    expect(WEIGHT * Math.sin(Math.atan(hill))).toBeCloseTo(spare, 6);
  });
});

describe('other cars', () => {
  test('a light one with a small engine runs out of power before the redline', () => {
    const worked = feel({
      [`${CAR}/car_mass`]: '2100 lb',
      [`${CAR}/stated_torques`]: '[50, 56, 60, 62, 63, 62, 60, 57, 52, 45]',
      [`${GEARS}/gear_ratios`]: 'Close five-speed',
      [`${GEARS}/axle_ratio`]: '4.1',
    });
    expect(textIn(worked, 'limited_by')).toMatch(/^power/);
    expect(textIn(worked, 'first_gear_ends_by')).toMatch(/^pull/);
    expect(numberIn(worked, 'top_speed', 'mph')).toBeLessThan(
      numberIn(worked, 'speed_by_power', 'mph') * (1 + 1e-9),
    );
  });

  test('a strong one on short gears ends at the redline, and spins its wheels on a hill', () => {
    const worked = feel({
      [`${CAR}/stated_torques`]: '[240, 280, 300, 315, 320, 318, 310, 300, 285, 270]',
      [`${GEARS}/gear_ratios`]: '[3.15, 1.95, 1.35, 1.00]',
      [`${GEARS}/axle_ratio`]: '4.1',
    });
    expect(textIn(worked, 'limited_by')).toMatch(/^the redline/);
    expect(textIn(worked, 'first_gear_ends_by')).toMatch(/^grip/);
    const redline = numbersIn(worked, 'road_speed_at_redline', 'mph').at(-1)!;
    expect(numberIn(worked, 'top_speed', 'mph')).toBeCloseTo(redline, 6);
    const held = WEIGHT * Math.sin(Math.atan(numberIn(worked, 'hill_start', '')));
    expect(held).toBeGreaterThan(GRIP - load(20 * MPH));
    expect(held).toBeLessThan(GRIP);
  });

  test('with six gears and wet road every figure is there, and the start is slower', () => {
    const [dry, wet] = [{}, { friction: '0.4' }].map((more) =>
      feel({ [`${GEARS}/gear_ratios`]: 'Six-speed', ...more }),
    ) as [Worked, Worked];
    expect(numbersIn(wet, 'steepest_hill', '%')).toHaveLength(6);
    expect(numberIn(wet, 'new_sprint', 's')).toBeGreaterThan(numberIn(dry, 'new_sprint', 's'));
    expect(numberIn(wet, 'top_speed', 'mph')).toBe(numberIn(dry, 'top_speed', 'mph'));
  });

  test('on a slope the spare pull is less by the weight along it', () => {
    const [level, hill] = [feel(), feel({ grade: '10' })];
    const [before, after] = [level, hill].map((w) => numbersIn(w, 'spare_here', 'lbf'));
    const along = WEIGHT * Math.sin(Math.atan(0.1));
    before!.forEach((spare, i) => {
      expect(spare - after![i]!).toBeCloseTo(along, 6);
    });
    expect(along).toBeLessThan(0.1 * WEIGHT);
  });
});

describe('mistakes that people make', () => {
  test('a gear of 1.00 is not top gear: overdrive stands last, and is the slower one', () => {
    const worked = feel();
    const tops = numbersIn(worked, 'top_speed_in_gear', 'mph');
    expect(numberIn(worked, 'speed_in_top_gear', 'mph')).toBe(tops[4]);
    expect(Math.max(...tops)).toBe(tops[3]);
    expect(numberIn(worked, 'lost_in_top_gear', 'mph')).toBeCloseTo(tops[3]! - tops[4]!, 9);
  });

  test('ratios listed low to high give the same run', () => {
    const upward = feel({ [`${GEARS}/gear_ratios`]: '[0.74, 1.00, 1.35, 1.95, 3.15]' });
    for (const name of ['new_sprint', 'new_quarter', 'top_speed', 'hill_start']) {
      expect(numbersIn(upward, name, '')).toEqual(numbersIn(feel(), name, ''));
    }
  });

  test('a gross curve taken for net sells a car that is not there', () => {
    const gross = `[${TORQUES.map((torque) => torque / 0.8).join(', ')}]`;
    const sold = feel({ [`${CAR}/stated_torques`]: gross });
    const honest = feel({ [`${CAR}/stated_torques`]: gross, [`${CAR}/rating`]: 'gross' });
    expect(numberIn(honest, 'new_quarter', 's')).toBeCloseTo(
      numberIn(feel(), 'new_quarter', 's'),
      9,
    );
    const gained = numberIn(honest, 'new_quarter', 's') - numberIn(sold, 'new_quarter', 's');
    expect(gained).toBeGreaterThan(0.8);
    expect(gained).toBeLessThan(1.6);
  });

  test('the circumference of a tyre in a rack makes every pull 3 % too small', () => {
    const diameter = 15 + (2 * 205 * 0.6) / 25.4;
    const racked = feel({ [`${GEARS}/measured_rollout`]: `${Math.PI * diameter} in` });
    const [right, wrong] = [feel(), racked].map((w) => numbersIn(w, 'spare_for_hill', 'lbf')[1]);
    expect(wrong).toBeLessThan(right!);
    const turns = numbersIn(racked, 'engine_turns', 'rev/mi')[0]!;
    expect(turns / numbersIn(feel(), 'engine_turns', 'rev/mi')[0]!).toBeCloseTo(3.05 / Math.PI, 9);
  });

  test('a car weighed in kilograms is the same car, and a mass is not a force', () => {
    const metric = feel({ [`${CAR}/car_mass`]: `${3200 * 0.45359237} kg` });
    expect(numberIn(metric, 'new_quarter', 's')).toBeCloseTo(
      numberIn(feel(), 'new_quarter', 's'),
      9,
    );
    expect(numberIn(metric, 'rolling_at_walk', 'lbf')).toBeCloseTo(32, 9);
  });

  test('a slope of 100 % is 45°, and not a wall', () => {
    expect(numberIn(feel({ grade: '100' }), 'hill_load', 'lbf')).toBeCloseTo(
      WEIGHT / Math.SQRT2,
      9,
    );
  });

  test('tyres that would lift the front wheels are outside of the sum', () => {
    const grip = cellIndex(BOOK, SHEET, 'grip');
    const lifted = feel({ friction: '1.1', centre_height: '96' });
    expect(warningsOf(BOOK, lifted.frame, grip)).toEqual([
      'By this sum the front wheels would leave the road.',
    ]);
    expect(warningsOf(BOOK, feel().frame, grip)).toEqual([]);
  });
});

describe('how far to trust it', () => {
  test('a time is quoted with the spread that the 32 cars give', () => {
    const worked = feel();
    const quarter = numberIn(worked, 'new_quarter', 's');
    expect(numberIn(worked, 'quarter_from', 's')).toBeCloseTo(quarter - 1.5, 9);
    expect(numberIn(worked, 'quarter_to', 's')).toBeCloseTo(quarter + 1.5, 9);
    const sprint = numberIn(worked, 'new_sprint', 's');
    expect(numberIn(worked, 'sprint_to', 's')).toBeCloseTo(sprint * (1 + 1.5 / quarter), 9);
  });

  test('no run beats all the power from the first inch', () => {
    for (const shift of ['0.1 s', '1.5 s']) {
      const worked = feel({ shift_time: shift });
      expect(numberIn(worked, 'over_ideal', '')).toBeGreaterThan(1);
    }
  });

  test('a quicker shift is a quicker run, by about the time that it saves', () => {
    const [slow, quick] = [feel({ shift_time: '1.0 s' }), feel({ shift_time: '0.5 s' })];
    const saved = numberIn(slow, 'new_sprint', 's') - numberIn(quick, 'new_sprint', 's');
    expect(saved).toBeGreaterThan(0.5);
    expect(saved).toBeLessThan(2 * 0.5 + 0.3);
  });
});

/** As good as constant power from 1000 rpm up, and little to hold it back: no road car. */
const UNHEARD_OF: Entries = {
  [`${CAR}/stated_torques`]: '[643, 429, 322, 257, 214, 184, 161, 143, 129, 117]',
  [`${CAR}/drag_area`]: '0.1',
  [`${GEARS}/driveline_efficiency`]: '100',
  rolling_share: '0.1',
  friction: '2',
  shift_time: '0',
};

testWindows(BOOK, SHEET, [
  ['hill_start', 'below', { [`${GEARS}/gear_ratios`]: '[1.95, 1.35, 1.00]' }, 'A steep ramp'],
  ['hill_in_top', 'below', { [`${GEARS}/axle_ratio`]: '2' }, 'will not hold a motorway hill'],
  ['against_rule', 'below', UNHEARD_OF, 'Far quicker'],
  ['against_rule', 'above', { friction: '0.2' }, 'Far slower'],
  ['over_ideal', 'below', UNHEARD_OF, 'Hardly any road car'],
]);

testPractice(BOOK, SHEET, [
  ['The hill', 'per cent for degrees'],
  ['The hill', 'presses on the road'],
  ['The hill', 'Divided by g'],
  ['What the tyres can push', 'standing still'],
  ['What the tyres can push', 'all four wheels'],
  ['What the tyres can push', 'the wrong way'],
]);

function textIn({ frame }: Worked, name: string): string {
  const outcome = outcomeOf(BOOK, frame, cellIndex(BOOK, SHEET, name));
  return outcome.state === 'value' ? String(outcome.value) : outcome.state;
}
