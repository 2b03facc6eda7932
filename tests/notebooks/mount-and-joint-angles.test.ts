import { describe, expect, test } from 'vitest';
import { answerFind } from '../../src/sheet/find/find-given.ts';
import { sweepChart } from '../../src/sheet/sweep.ts';
import { type Entries, numberIn, numbersIn, openNotebooks, work } from '../support/notebooks.ts';
import { testPractice } from '../support/practice.ts';
import { verdicts } from '../support/verdicts.ts';
import { testWindows } from '../support/windows.ts';

const BOOK = openNotebooks();
const SHEET = '100-mount-and-joint-angles';
const OLD = '40-before-it-is-stripped';
const line = (entries: Entries = {}) => work(BOOK, SHEET, entries);

const DEG = Math.PI / 180;
const sin = (degrees: number) => Math.sin(degrees * DEG);
const atan = (ratio: number) => Math.atan(ratio) / DEG;
const LENGTH = 45.985;

/** Angle between two lines by their slope and plan, from the cosine rule of their directions. */
function bend(one: readonly [number, number], other: readonly [number, number]): number {
  const [a, b] = [one, other].map(([slope, plan]) => [
    1,
    Math.tan(plan * DEG),
    Math.tan(slope * DEG),
  ]);
  const dot = a!.reduce((sum, part, i) => sum + part * b![i]!, 0);
  return Math.acos(dot / Math.hypot(...a!) / Math.hypot(...b!)) / DEG;
}

/** A driveline that lies in one plane, with floor and plan out of the way. */
const IN_PLANE: Entries = {
  gearbox_plan: '0',
  front_joint_aside: '1.00',
};
/** The same with the gearbox set parallel to the pinion at cruise, to the last digit. */
const PARALLEL: Entries = {
  ...IN_PLANE,
  lift_made: `${36 * (sin(4.2) - sin(3))}`,
};

describe('the worked example', () => {
  const worked = line();
  const run = Math.sqrt(LENGTH ** 2 - (11.63 - 11.2) ** 2 - 0.75 ** 2);
  const plan = atan(0.75 / run);
  const climbs = [0, 0.6, 2];

  test('as it bolts up comes out as by hand', () => {
    const shafts = climbs.map((climb) => {
      const rise = 8 * (sin(2.4 + climb) - sin(2.4));
      return atan((11.63 - 11.2 - rise) / run);
    });
    numbersIn(worked, 'bolted_shaft', 'deg').forEach((slope, i) => {
      expect(slope).toBeCloseTo(shafts[i]!, 9);
    });
    numbersIn(worked, 'bolted_front', 'deg').forEach((angle, i) => {
      expect(angle).toBeCloseTo(bend([4.2, 0.4], [shafts[i]!, plan]), 6);
    });
    numbersIn(worked, 'bolted_rear', 'deg').forEach((angle, i) => {
      expect(angle).toBeCloseTo(bend([shafts[i]!, plan], [2.4 + climbs[i]!, 0]), 6);
    });
  });

  test('takes the packer that brings the gearbox to the pinion as it runs', () => {
    const lift = 36 * (sin(4.2) - sin(2.4 + 0.6));
    expect(numberIn(worked, 'lift_wanted', 'in')).toBeCloseTo(lift, 9);
    expect(numbersIn(worked, 'plates', 'in')).toEqual([0.5, 0.25].map((n) => expect.closeTo(n, 9)));
    const slope = Math.asin(sin(4.2) - 0.75 / 36) / DEG;
    expect(numberIn(worked, 'new_gearbox_slope', 'deg')).toBeCloseTo(slope, 9);
  });

  test('is worked again after the move', () => {
    const slope = Math.asin(sin(4.2) - 0.75 / 36) / DEG;
    const span = 11 + 32.35 + 3.325;
    const [cos1, cos2] = [Math.cos(4.2 * DEG), Math.cos(slope * DEG)];
    const rises = span * (sin(4.2) - sin(slope)) + 1.5 * (cos2 - cos1);
    const back = span * (cos2 - cos1) + 1.5 * (sin(slope) - sin(4.2));
    expect(numberIn(worked, 'front_joint_rises', 'in')).toBeCloseTo(rises, 9);
    const rise = 8 * (sin(3) - sin(2.4));
    const shaft = atan((11.63 + rises - 11.2 - rise) / (run - back));
    expect(numberIn(worked, 'new_shaft_slope', 'deg')).toBeCloseTo(shaft, 9);
    const aside = atan(0.75 / (run - back));
    const front = bend([slope, 0.4], [shaft, aside]);
    const rear = bend([shaft, aside], [3, 0]);
    expect(numberIn(worked, 'front_joint_angle', 'deg')).toBeCloseTo(front, 6);
    expect(numberIn(worked, 'rear_joint_angle', 'deg')).toBeCloseTo(rear, 6);
  });

  test('leaves a ripple of tan times sin of the equivalent angle', () => {
    const left = numberIn(worked, 'equivalent', 'rad');
    expect(numberIn(worked, 'ripple', '')).toBeCloseTo(1 / Math.cos(left) - Math.cos(left), 12);
  });

  test('shakes by the square of angle and speed', () => {
    const speed = (5000 * Math.PI) / 30;
    for (const [name, angle] of [
      ['pinion_shaken', 'equivalent'],
      ['shaft_shaken', 'front_joint_angle'],
      ['shaft_coasting', 'rear_joint_angle'],
    ] as const) {
      const small = (speed * numberIn(worked, angle, 'rad')) ** 2;
      expect(numberIn(worked, name, 'rad/s^2') / small).toBeCloseTo(1, 3);
    }
  });

  test('fails as it bolts up, on purpose, and passes with its packer', () => {
    const failing = Object.entries(verdicts(worked)).filter(([, verdict]) => verdict !== 'pass');
    expect(failing.map(([name]) => name)).toEqual(['bolted_joints', 'bolted_differ']);
  });
});

describe('three other cars', () => {
  test('all in one plane: angles are differences of slopes', () => {
    const worked = line(IN_PLANE);
    const [, shaft] = numbersIn(worked, 'bolted_shaft', 'deg');
    expect(numbersIn(worked, 'bolted_front', 'deg')[1]).toBeCloseTo(4.2 - shaft!, 9);
    expect(numbersIn(worked, 'bolted_rear', 'deg')[1]).toBeCloseTo(3 - shaft!, 9);
    for (const twist of numbersIn(worked, 'bolted_twist', 'deg')) expect(twist).toBe(0);
  });

  test('a tail that hangs too little is let down', () => {
    const worked = line({ new_gearbox_reading: '2.0', lift_made: '-3/4' });
    expect(numberIn(worked, 'lift_wanted', 'in')).toBeLessThan(0);
    expect(numberIn(worked, 'new_gearbox_slope', 'deg')).toBeCloseTo(
      Math.asin(sin(1.8) + 0.75 / 36) / DEG,
      9,
    );
    expect(numberIn(worked, 'front_joint_rises', 'in')).toBeLessThan(0);
    expect(numberIn(worked, 'shaft_steeper', 'deg')).toBeLessThan(0);
  });

  test('3° in side view and 4° in plan bend a joint by very nearly 5°', () => {
    const worked = line({
      new_gearbox_reading: '3.2',
      lift_made: '0',
      gearbox_plan: '4',
      front_joint_aside: '1.00',
      front_joint_height: '11.20',
      cruise_climb: '0',
    });
    expect(numberIn(worked, 'new_shaft_slope', 'deg')).toBeCloseTo(0, 9);
    expect(numberIn(worked, 'front_joint_angle', 'deg')).toBeCloseTo(4.9942, 4);
  });

  test('in millimetres it is the same car', () => {
    const metric = line({ front_joint_height: '295.402 mm', mounts_to_pad: '914.4 mm' });
    for (const name of ['front_joint_angle', 'rear_joint_angle', 'lift_wanted'])
      expect(numberIn(metric, name, '')).toBeCloseTo(numberIn(line(), name, ''), 9);
  });

  test('a floor out of level drops out of the angles', () => {
    const level = line({ [`${OLD}/floor_slope`]: '0', new_gearbox_reading: '4.2' });
    const tilted = line();
    const pinion = { [`${OLD}/pinion_reading`]: '2.4' };
    const same = line({ [`${OLD}/floor_slope`]: '0', new_gearbox_reading: '4.2', ...pinion });
    expect(numberIn(same, 'rear_joint_angle', 'deg')).toBeCloseTo(
      numberIn(tilted, 'rear_joint_angle', 'deg'),
      9,
    );
    expect(numberIn(level, 'rear_joint_angle', 'deg')).toBeGreaterThan(
      numberIn(tilted, 'rear_joint_angle', 'deg'),
    );
  });
});

describe('two joints of equal angles', () => {
  const aligned = line(PARALLEL);
  const [front, rear] = numbersIn(aligned, 'joints', 'deg');

  test('cancel in one plane with the yokes in line', () => {
    expect(front).toBeCloseTo(rear!, 9);
    expect(numberIn(aligned, 'equivalent', 'deg')).toBeLessThan(1e-3);
    expect(numberIn(aligned, 'swing', 'deg')).toBeLessThan(1e-6);
    expect(numberIn(aligned, 'pinion_wavers', '')).toBeCloseTo(0, 9);
  });

  test('add with the yokes a quarter turn out: √2 of one joint', () => {
    const worked = line({ ...PARALLEL, yokes_out: '90' });
    expect(numberIn(worked, 'equivalent', 'deg')).toBeCloseTo(front! * Math.SQRT2, 6);
    expect(numberIn(aligned, 'quarter_out', 'deg')).toBeCloseTo(front! * Math.SQRT2, 6);
    // Worked without the small-angle rule: twice what one joint alone does, to and fro.
    const alone = Math.atan((1 - Math.cos(front! * DEG)) / (2 * Math.sqrt(Math.cos(front! * DEG))));
    expect(numberIn(worked, 'swing', 'rad') / alone).toBeCloseTo(2, 3);
  });

  test('out of phase by any other angle leave something between', () => {
    const left = [0, 15, 45, 90].map((yokes_out) =>
      numberIn(line({ ...PARALLEL, yokes_out: `${yokes_out}` }), 'equivalent', 'deg'),
    );
    expect(left).toEqual(left.toSorted((a, b) => a - b));
    expect(left[2]).toBeGreaterThan(front! * 1.1);
  });

  test('pass the window of equal angles all the same: it does not see the yokes', () => {
    const worked = line({ ...PARALLEL, yokes_out: '90' });
    expect(verdicts(worked)).toMatchObject({ joints_differ: 'pass', pinion_shaken: 'pass' });
    const bent = line({ ...PARALLEL, yokes_out: '90', front_joint_height: '10.6' });
    expect(verdicts(bent)).toMatchObject({ joints_differ: 'pass', pinion_shaken: 'fail' });
  });

  test('in two planes want their yokes turned by the angle between the planes', () => {
    const turn = numberIn(line(), 'yokes_to_have', 'deg');
    const [straight, turned] = [line(), line({ yokes_out: `${turn}` })].map((worked) =>
      numberIn(worked, 'equivalent', 'deg'),
    );
    expect(turned).toBeLessThan(straight!);
    const [one, other] = numbersIn(line(), 'joints', 'rad');
    const best = Math.sqrt(Math.abs(one! ** 2 - other! ** 2)) / DEG;
    expect(turned).toBeCloseTo(best, 6);
    const wrong = numberIn(line({ yokes_out: `${-turn}` }), 'equivalent', 'deg');
    expect(wrong).toBeGreaterThan(straight!);
  });
});

test('a Z and a W both cancel, though the ends of the W are not parallel', () => {
  const { linked } = BOOK.finds.find(({ sheet }) => sheet === SHEET)!;
  const lifts = answerFind(BOOK, line(IN_PLANE).frame, SHEET, linked!)!.solutions;
  const [z, w] = lifts.map(({ from }) => line({ ...IN_PLANE, lift_made: `${from * 1000} mm` }));
  for (const worked of [z!, w!]) {
    const [front, rear] = numbersIn(worked, 'joints', 'deg');
    expect(front).toBeCloseTo(rear!, 6);
    expect(numberIn(worked, 'equivalent', 'deg')).toBeLessThan(0.01);
  }
  expect(numberIn(z!, 'new_gearbox_slope', 'deg')).toBeCloseTo(3, 6);
  // The shaft is the steepest of the three: both joints bend the same way.
  expect(numberIn(w!, 'new_gearbox_slope', 'deg')).toBeLessThan(
    numberIn(w!, 'new_shaft_slope', 'deg'),
  );
  expect(numberIn(w!, 'new_gearbox_slope', 'deg')).toBeCloseTo(
    2 * numberIn(w!, 'new_shaft_slope', 'deg') - 3,
    6,
  );
});

describe('a pinion that climbs under torque', () => {
  test('has its slope grow, its nose rise and its joint bend more', () => {
    const worked = line();
    const [rest, cruise, full] = numbersIn(worked, 'pinion_pulling', 'deg');
    expect([rest, cruise, full]).toEqual([2.4, 3, 4.4].map((slope) => expect.closeTo(slope, 9)));
    const rises = numbersIn(worked, 'nose_rises', 'in');
    expect(rises).toEqual(rises.toSorted((a, b) => a - b));
    const bends = numbersIn(worked, 'new_rear', 'deg');
    expect(bends[2]).toBeGreaterThan(bends[0]!);
  });

  test('matched at rest is not matched on the road', () => {
    const atRest = line({ ...IN_PLANE, lift_made: `${36 * (sin(4.2) - sin(2.4))}` });
    const left = numbersIn(atRest, 'equivalents', 'deg');
    expect(left[0]).toBeLessThan(1e-3);
    expect(left[1]).toBeGreaterThan(0.5);
    const atCruise = numbersIn(line(PARALLEL), 'equivalents', 'deg');
    expect(atCruise[1]).toBeLessThan(1e-3);
    expect(atCruise[0]).toBeGreaterThan(0.5);
  });

  test('with its sign turned round would be packed the wrong way', () => {
    const [climbing, still] = [line(), line({ cruise_climb: '0' })].map((worked) =>
      numberIn(worked, 'lift_wanted', 'in'),
    );
    expect(climbing).toBeLessThan(still!);
    expect(still! - climbing!).toBeCloseTo(36 * (sin(3) - sin(2.4)), 9);
  });
});

test('a packer steepens the shaft, and who forgets that has the front joint wrong by as much', () => {
  const worked = line(IN_PLANE);
  const steeper = numberIn(worked, 'shaft_steeper', 'deg');
  expect(steeper).toBeGreaterThan(1);
  const forgotten = numberIn(worked, 'front_if_forgotten', 'deg');
  expect(forgotten - numberIn(worked, 'front_joint_angle', 'deg')).toBeCloseTo(steeper, 1);
});

test('without a packer nothing moves', () => {
  const worked = line({ lift_made: '0' });
  const names = [
    ['new_front', 'bolted_front'],
    ['new_rear', 'bolted_rear'],
    ['equivalents', 'bolted_equivalent'],
  ] as const;
  for (const [now, before] of names)
    numbersIn(worked, now, 'deg').forEach((angle, i) => {
      expect(angle).toBeCloseTo(numbersIn(worked, before, 'deg')[i]!, 9);
    });
});

describe('over the travel of the suspension', () => {
  test('at ride height the joints are as they were', () => {
    const worked = line();
    expect(numberIn(worked, 'front_in_travel', 'deg')).toBeCloseTo(
      numberIn(worked, 'front_joint_angle', 'deg'),
      2,
    );
    expect(Math.abs(numberIn(worked, 'joints_part', 'in'))).toBeLessThan(0.005);
  });

  test.each([-3, 2])('%d in of travel turns the shaft as by hand', (travel) => {
    const worked = line({ axle_travel: `${travel}` });
    const back =
      Math.sqrt(36 ** 2 - (-2.8 - travel) ** 2) -
      Math.sqrt(36 ** 2 - 2.8 ** 2) -
      8 * (Math.cos(3 * DEG) - Math.cos(2.4 * DEG));
    expect(numberIn(worked, 'pinion_joint_back', 'in')).toBeCloseTo(back, 9);
    const up = travel + 8 * (sin(3) - sin(2.4));
    const fall = numberIn(worked, 'new_height', 'in') - 11.2 - up;
    const slope = atan(fall / (numberIn(worked, 'new_run', 'in') + back));
    expect(numberIn(worked, 'shaft_in_travel', 'deg')).toBeCloseTo(slope, 9);
  });

  test('parallel ends stay alike wherever the axle is', () => {
    for (const axle_travel of ['-4', '-1', '3']) {
      const worked = line({ ...PARALLEL, axle_travel });
      expect(numberIn(worked, 'front_in_travel', 'deg')).toBeCloseTo(
        numberIn(worked, 'rear_in_travel', 'deg'),
        9,
      );
    }
  });

  test('an arm that is solid with the axle turns the pinion as it turns', () => {
    const worked = line({ axle_travel: '2', pinion_follows: '100' });
    const turned = numberIn(worked, 'arm_turns', 'deg');
    expect(turned).toBeCloseTo((Math.asin(-4.8 / 36) - Math.asin(-2.8 / 36)) / DEG, 9);
    expect(numberIn(worked, 'pinion_in_travel', 'deg')).toBeCloseTo(3 + turned, 9);
    const bends = ['front_in_travel', 'rear_in_travel'].map((name) =>
      numberIn(worked, name, 'deg'),
    );
    expect(Math.abs(bends[0]! - bends[1]!)).toBeGreaterThan(2);
  });

  test('the chart is the sheet worked at each height', () => {
    const { frame } = line();
    const chart = BOOK.charts.find(
      ({ statement }) => statement.title === 'Joint angles over suspension travel',
    )!;
    const data = sweepChart(BOOK, frame, chart.statement, SHEET, 'inch-pound');
    if ('code' in data) throw new Error(data.message);
    const worked = line({ axle_travel: '-4' });
    const ends = data.series.map(({ points }) => points[0]![1]);
    expect(ends[0]).toBeCloseTo(numberIn(worked, 'front_in_travel', 'deg'), 9);
    expect(ends[1]).toBeCloseTo(numberIn(worked, 'rear_in_travel', 'deg'), 9);
  });
});

test('what is read in turning speed is not read in plain numbers', () => {
  const [rpm, radians] = [
    line({ shaft_speed: '3000' }),
    line({ shaft_speed: `${(3000 * Math.PI) / 30} rad/s` }),
  ].map((worked) => numberIn(worked, 'shaft_shaken', 'rad/s^2'));
  expect(radians).toBeCloseTo(rpm!, 6);
});

describe('windows', () => {
  const straight: Entries = {
    ...IN_PLANE,
    new_gearbox_reading: '0.9',
    front_joint_height: '11.83',
  };
  testWindows(BOOK, SHEET, [
    ['bolted_joints', 'below', straight, 'the same half degree more'],
    ['bolted_joints', 'above', {}, 'Pack or lower the gearbox'],
    ['bolted_differ', 'above', {}, 'Pack or lower the gearbox'],
    ['tunnel_left', 'below', { tunnel_room: '1' }, 'A thinner packer'],
    ['joints', 'below', { ...straight, lift_made: '0' }, 'the same half degree more'],
    ['joints', 'above', { lift_made: '-1' }, 'before you pack any more'],
    ['joints_differ', 'above', { lift_made: '0' }, 'Another packer turns the gearbox'],
    ['equivalent', 'above', { lift_made: '-1', yokes_out: '90' }, 'match the two joints'],
    ['pinion_shaken', 'above', { lift_made: '0' }, 'Match the joints better'],
    ['shaft_shaken', 'above', { lift_made: '-1' }, 'Both joints must be bent less'],
    ['shaft_coasting', 'above', { cruise_climb: '3.0' }, 'rear joint must be bent less'],
    ['front_in_travel', 'above', { axle_travel: '-10' }, 'A longer bump stop'],
    ['rear_in_travel', 'above', { axle_travel: '-10' }, 'A wedge'],
  ]);
});

describe('practice', () => {
  testPractice(BOOK, SHEET, [
    ['Bent two ways at once', 'side view only'],
    ['Bent two ways at once', 'sides of a triangle'],
    ['Bent two ways at once', 'Both slope down'],
    ['Bent two ways at once', 'against the level'],
    ['What the second joint leaves', 'difference of the squares'],
    ['What the second joint leaves', 'a quarter turn out'],
    ['What the second joint leaves', 'takes away what'],
    ['What the second joint leaves', 'no second joint'],
    ['Equal angles, and yet', 'only with the yokes in line'],
    ['Equal angles, and yet', 'but as squares'],
    ['Equal angles, and yet', 'one joint alone'],
    ['Which packer?', 'for the pinion at rest'],
    ['Which packer?', 'its nose goes up'],
    ['Which packer?', 'By so much the joint rises'],
    ['Which packer?', 'To the level'],
  ]);
});
