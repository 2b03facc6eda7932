import { describe, expect, test } from 'vitest';
import { outcomeOf } from '../../src/sheet/solve.ts';
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
const SHEET = '90-shifter-and-tunnel';
const ANGLES = '100-mount-and-joint-angles';
const OLD = '40-before-it-is-stripped';
const tunnel = (entries: Entries = {}) => work(BOOK, SHEET, entries);
const inches = (worked: Worked, name: string) => numberIn(worked, name, 'in');

const DEG = Math.PI / 180;
const GEARS = ['1st', '2nd', '3rd', '4th', '5th', 'R', 'N'];
const BACK = [-1.9, 1.9, -1.9, 1.9, -1.9, 1.9, 0];
const RIGHT = [-1.3, -1.3, 0, 0, 1.3, 1.3, 0];
/** A gearbox that lies dead level: read as the floor is, and not packed. */
const LEVEL: Entries = { [`${ANGLES}/new_gearbox_reading`]: '0.2', [`${ANGLES}/lift_made`]: '0' };

describe('the worked example', () => {
  const worked = tunnel();
  const slope = numberIn(worked, `${ANGLES}/new_gearbox_slope`, 'rad');
  const [sin, cos] = [Math.sin(slope), Math.cos(slope)];
  const along = 6.45 + 18.2;
  const back = along * cos + 5 * sin;
  const crank = 12.69 + (30.9 + 3.25) * Math.sin(3 * DEG) - 11 * (sin - Math.sin(3 * DEG));
  const skin = 20.6 - (crank - along * sin + 5 * cos);
  const leans = BACK.map((throwBack) => slope + Math.asin(throwBack / 11));
  const asides = RIGHT.map((right) => Math.asin(right / 11));

  test('has its lever where it is by hand', () => {
    expect(inches(worked, 'pivot_back')).toBeCloseTo(back, 9);
    expect(inches(worked, 'pivot_from_datum')).toBeCloseTo(back - 31, 9);
    expect(inches(worked, 'pivot_miss')).toBeCloseTo(back - (31 - 6.25), 9);
    expect(inches(worked, 'skin_height')).toBeCloseTo(skin, 9);
  });

  test('weighs all three places, and takes the nearest', () => {
    const misses = [11.6, 15, 18.2].map((at) => (6.45 + at) * cos + 5 * sin - 24.75);
    numbersIn(worked, 'miss_all', 'in').forEach((miss, i) => {
      expect(miss).toBeCloseTo(misses[i]!, 9);
    });
    expect(inches(worked, 'nearest_miss')).toBeCloseTo(Math.min(...misses.map(Math.abs)), 9);
    expect(inches(worked, 'nearest_miss')).toBeCloseTo(Math.abs(inches(worked, 'pivot_miss')), 9);
  });

  test('sweeps at the skin in every gear as by hand', () => {
    numbersIn(worked, 'sweep_back', 'in').forEach((sweep, i) => {
      expect(sweep).toBeCloseTo(skin * Math.tan(leans[i]!), 9);
    });
    numbersIn(worked, 'sweep_right', 'in').forEach((sweep, i) => {
      expect(sweep).toBeCloseTo(skin * Math.tan(asides[i]!), 9);
    });
  });

  test('has its least hole and its largest', () => {
    const edges = leans.flatMap((lean) =>
      [-1, 1].map((side) => skin * Math.tan(lean) + (side * 0.375) / Math.cos(lean)),
    );
    const least = Math.max(...edges) - Math.min(...edges) + 2 * (0.375 + 0.2);
    expect(inches(worked, 'hole_least_length')).toBeCloseTo(least, 9);
    const lean = Math.asin(1.3 / 11);
    const wide = 2 * (skin * Math.tan(lean) + 0.375 / Math.cos(lean) + 0.375 + 0.25);
    expect(inches(worked, 'hole_least_width')).toBeCloseTo(wide, 9);
    expect(inches(worked, 'hole_most_length')).toBeCloseTo(5.5 - 1, 9);
    expect(inches(worked, 'hole_most_width')).toBeCloseTo(Math.min(4.5 - 1, 5.5 - 0.5), 9);
  });

  test('takes the smallest saw that is large enough, and two holes with it', () => {
    expect(inches(worked, 'saw')).toBeCloseTo(3, 9);
    const length = inches(worked, 'hole_least_length') + 0.5;
    expect(inches(worked, 'opening_length')).toBeCloseTo(length, 9);
    const [first, second] = ['first_centre', 'second_centre'].map((name) => inches(worked, name));
    expect(second! - first!).toBeCloseTo(length - 3, 9);
    expect((first! + second!) / 2).toBeCloseTo(inches(worked, 'hole_middle'), 9);
    expect(inches(worked, 'hole_front')).toBeCloseTo(first! - 1.5, 9);
    expect(inches(worked, 'hole_rear')).toBeCloseTo(second! + 1.5, 9);
  });

  test('has the room in each gear that a walk round the edge finds', () => {
    const walked = GEARS.map((_, i) => roomByWalking(worked, i));
    numbersIn(worked, 'room_in_gear', 'in').forEach((room, i) => {
      expect(room).toBeCloseTo(walked[i]!, 4);
    });
  });

  test('passes every check of its own', () => {
    expect(new Set(Object.values(verdicts(worked)))).toEqual(new Set(['pass']));
  });
});

/** From the lever to the edge of an opening with round ends, by 20,000 steps along the edge. */
function roomByWalking(worked: Worked, gear: number): number {
  const at = (name: string) => inches(worked, name);
  const [first, second, radius] = [at('first_centre'), at('second_centre'), at('saw') / 2];
  const lever = [
    numbersIn(worked, 'lever_from_datum', 'in')[gear]!,
    numbersIn(worked, 'sweep_right', 'in')[gear]!,
  ] as const;
  const edge = Array.from({ length: 20_000 }, (_, i) => {
    const turn = (i / 20_000) * 2 * Math.PI;
    const end = Math.cos(turn) > 0 ? second : first;
    return [end + radius * Math.cos(turn), at('hole_aside') + radius * Math.sin(turn)] as const;
  });
  const side = Array.from({ length: 2_000 }, (_, i) => first + ((second - first) * i) / 2_000);
  const sides = side.flatMap((along) =>
    [-radius, radius].map((aside) => [along, at('hole_aside') + aside] as const),
  );
  const nearest = Math.min(
    ...[...edge, ...sides].map(([along, aside]) => Math.hypot(along - lever[0], aside - lever[1])),
  );
  return nearest - Math.max(...numbersIn(worked, 'half_along', 'in'));
}

describe('three other cars', () => {
  test('a level gearbox has its lever straight up, and the hole over the pivot', () => {
    const worked = tunnel(LEVEL);
    expect(inches(worked, 'pivot_back')).toBeCloseTo(24.65, 9);
    expect(inches(worked, 'hole_middle')).toBeCloseTo(inches(worked, 'pivot_from_datum'), 9);
    const [front, rear] = ['sweep_front', 'sweep_rear'].map((name) => inches(worked, name));
    expect(front).toBeCloseTo(-rear!, 9);
  });

  test('a raked lever with a thick sleeve in a high tunnel', () => {
    const worked = tunnel({
      ...LEVEL,
      lever_rake: '10',
      lever_diameter: '1',
      [`${OLD}/tunnel_height`]: '21.5',
    });
    const skin = inches(worked, 'skin_height');
    const [fore, aft] = [10 * DEG - Math.asin(1.9 / 11), 10 * DEG + Math.asin(1.9 / 11)];
    expect(inches(worked, 'sweep_rear')).toBeCloseTo(skin * Math.tan(aft) + 0.5 / Math.cos(aft), 9);
    expect(inches(worked, 'sweep_front')).toBeCloseTo(
      skin * Math.tan(fore) - 0.5 / Math.cos(fore),
      9,
    );
    expect(inches(worked, 'hole_middle')).toBeGreaterThan(inches(worked, 'pivot_from_datum'));
  });

  test('a short lever in millimetres, one round hole', () => {
    const worked = tunnel({
      lever_length: '400 mm',
      lever_diameter: '15 mm',
      rock_along: '3 mm',
      rock_across: '3 mm',
      clear: '8 mm',
      longer: '0',
      hole_saws: '[30, 40, 76, 102] mm',
    });
    expect(inches(worked, 'saw_centres')).toBeCloseTo(0, 9);
    expect(numberIn(worked, 'opening_length', 'mm')).toBeCloseTo(numberIn(worked, 'saw', 'mm'), 9);
    expect(numberIn(worked, 'saw', 'mm')).toBeGreaterThanOrEqual(
      numberIn(worked, 'hole_least_length', 'mm') - 1e-9,
    );
  });

  test('a console off the middle leaves the bezel less to one side', () => {
    const [middle, aside] = [tunnel(), tunnel({ [`${OLD}/console_aside`]: '-0.2' })];
    expect(inches(middle, 'overlap_side') - inches(aside, 'overlap_side')).toBeCloseTo(0.2, 9);
  });

  test('a pivot above the skin has the turret come through, and says so', () => {
    const worked = tunnel({ [`${OLD}/tunnel_height`]: '18.0' });
    expect(inches(worked, 'skin_height')).toBeLessThan(0);
    expect(verdicts(worked).skin_height).toBe('fail');
  });
});

describe('mistakes', () => {
  test('another place of the lever is found out by the console', () => {
    const worked = tunnel({ place: 'Middle' });
    expect(inches(worked, 'pivot_miss')).toBeCloseTo(numbersIn(tunnel(), 'miss_all', 'in')[1]!, 9);
    expect(verdicts(worked)).toMatchObject({ pivot_miss: 'fail', overlap_front: 'fail' });
  });

  test('the gearbox taken as level puts lever and hole too far forward', () => {
    const [hung, level] = [tunnel(), tunnel(LEVEL)];
    expect(inches(hung, 'pivot_back')).toBeGreaterThan(inches(level, 'pivot_back') + 0.1);
    expect(inches(hung, 'hole_middle')).toBeGreaterThan(inches(level, 'hole_middle') + 0.2);
  });

  test('another packer moves the hole: look again before it is cut', () => {
    const packed = tunnel();
    const bare = tunnel({ [`${ANGLES}/lift_made`]: '0' });
    expect(inches(bare, 'hole_middle')).not.toBeCloseTo(inches(packed, 'hole_middle'), 1);
  });

  test('the hole cut to the throws at the knob would be far too large', () => {
    const worked = tunnel();
    const atKnob = 2 * 1.3 + 2 * (0.375 + 0.375 + 0.25);
    expect(atKnob).toBeGreaterThan(inches(worked, 'hole_most_width'));
    expect(inches(worked, 'hole_least_width')).toBeLessThan(2.6);
  });

  test('an opening no longer than the least touches in the corner gears: its ends are round', () => {
    const worked = tunnel({ longer: '0', hole_saws: '[2 5/8] in' });
    expect(inches(worked, 'opening_length')).toBeCloseTo(inches(worked, 'hole_least_length'), 9);
    const rooms = numbersIn(worked, 'room_with_rock', 'in');
    const [corner, straight] = [rooms[0]!, rooms[2]!];
    expect(corner).toBeLessThan(0.375);
    expect(straight).toBeGreaterThan(corner);
    expect(verdicts(worked).room_with_rock).toBe('fail');
  });

  test('an engine that rocks more wants a wider hole, by as much on both sides', () => {
    const [still, soft] = [tunnel({ rock_across: '0' }), tunnel({ rock_across: '0.5' })];
    expect(inches(soft, 'hole_least_width') - inches(still, 'hole_least_width')).toBeCloseTo(1, 9);
  });

  test('no saw in stock that is large enough is told, and nothing is worked from it', () => {
    const worked = tunnel({ hole_saws: '[1, 2] in' });
    const outcome = outcomeOf(BOOK, worked.frame, cellIndex(BOOK, SHEET, 'saw'));
    expect(outcome.state).toBe('failed');
    expect(verdicts(worked)).toMatchObject({ saw: 'unknown', room_with_rock: 'unknown' });
    expect(inches(worked, 'hole_least_width')).toBeGreaterThan(2);
  });

  test('a throw longer than the lever cannot be, and is told', () => {
    const worked = tunnel({ lever_length: '1.5' });
    const { state } = outcomeOf(BOOK, worked.frame, cellIndex(BOOK, SHEET, 'lean_back'));
    expect(state).toBe('failed');
  });
});

describe('windows', () => {
  testWindows(BOOK, SHEET, [
    ['pivot_miss', 'below', { place: 'Middle' }, 'Try the next place back'],
    ['pivot_miss', 'above', { lever_moved: '3' }, 'Try the next place forward'],
    ['hole_least_length', 'above', { bezel_length: '3.5' }, 'A larger bezel'],
    ['hole_least_width', 'above', { bezel_width: '3.25' }, 'A wider bezel'],
    ['saw', 'above', { hole_saws: '[2, 4] in' }, 'Mark the outline'],
    [
      'room_with_rock',
      'below',
      { longer: '0', hole_saws: '[2 5/8] in' },
      'Make the opening longer',
    ],
    ['overlap_front', 'below', { lever_moved: '-1.25' }, 'Move the console or the lever'],
    ['overlap_rear', 'below', { lever_moved: '1' }, 'Move the console or the lever'],
    ['overlap_side', 'below', { [`${OLD}/console_aside`]: '0.5' }, 'A wider bezel'],
    ['skin_height', 'below', { [`${OLD}/tunnel_height`]: '18.5' }, 'Cut for the turret'],
    ['console_length', 'below', { bezel_length: '6.5' }, 'Trim the console'],
    ['console_width', 'below', { bezel_width: '5.5' }, 'Trim the console'],
    ['pipe_clear', 'below', { pipe_clear: '0.5' }, 'Unclip it'],
  ]);
});

describe('practice', () => {
  testPractice(BOOK, SHEET, [
    ['Where does it come up?', 'along the gearbox'],
    ['Where does it come up?', 'add the rise'],
    ['Where does it come up?', 'not forward'],
    ['Where does it come up?', 'changed places'],
    ['How wide is the least hole?', 'swing at the knob'],
    ['How wide is the least hole?', 'rocks on its mounts'],
    ['How wide is the least hole?', 'has a thickness'],
    ['How wide is the least hole?', 'count on both sides'],
    ['How wide is the least hole?', 'from the middle to one edge'],
  ]);
});
