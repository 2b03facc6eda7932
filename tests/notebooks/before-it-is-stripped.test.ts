import { describe, expect, test } from 'vitest';
import { outcomeOf } from '../../src/sheet/solve.ts';
import { warningsOf } from '../../src/sheet/warnings.ts';
import {
  cellIndex,
  type Entries,
  enter,
  numberIn,
  openNotebooks,
  work,
} from '../support/notebooks.ts';
import { testPractice } from '../support/practice.ts';
import { verdicts } from '../support/verdicts.ts';
import { testWindows } from '../support/windows.ts';

const BOOK = openNotebooks();
const SHEET = '40-before-it-is-stripped';
const car = (entries: Entries = {}) => work(BOOK, SHEET, entries);
const DEGREE = Math.PI / 180;

/** Where a point behind and above the mounts comes to when engine and gearbox turn by an angle, tail down. */
function turn(back: number, up: number, angle: number): readonly [back: number, up: number] {
  return [
    back * Math.cos(angle) + up * Math.sin(angle),
    up * Math.cos(angle) - back * Math.sin(angle),
  ];
}

describe('the worked example', () => {
  const worked = car();

  test('has its slopes, joints and heights by hand', () => {
    expect(numberIn(worked, 'old_gearbox_slope', 'deg')).toBeCloseTo(3.0, 9);
    expect(numberIn(worked, 'old_shaft_slope', 'deg')).toBeCloseTo(1.8, 9);
    expect(numberIn(worked, 'pinion_slope', 'deg')).toBeCloseTo(2.4, 9);
    expect(numberIn(worked, 'old_front_joint', 'deg')).toBeCloseTo(1.2, 9);
    expect(numberIn(worked, 'old_rear_joint', 'deg')).toBeCloseTo(0.6, 9);
    const byHeights = Math.asin((12.69 - 11.2) / 47.5) / DEGREE;
    expect(numberIn(worked, 'slope_by_heights', 'deg')).toBeCloseTo(byHeights, 9);
    const crank = 12.69 + (30.9 + 3.25) * Math.sin(3 * DEGREE);
    expect(numberIn(worked, 'crank_height', 'in')).toBeCloseTo(crank, 9);
  });

  test('places lever and console behind the block face by way of the datum', () => {
    expect(numberIn(worked, 'shifter_from_face', 'in')).toBeCloseTo(25, 9);
    expect(numberIn(worked, 'console_from_face', 'in')).toBeCloseTo(24.75, 9);
  });

  test('lets the tail down by just what was planned when the engine tilts as reckoned', () => {
    const tilt = numberIn(worked, 'tilt', 'rad');
    const [, tail] = turn(42, -0.7, tilt);
    expect(-0.7 - tail).toBeCloseTo(3, 9);
    const [head] = turn(10.25, 15, tilt);
    expect(numberIn(worked, 'head_moves', 'in')).toBeCloseTo(head - 10.25, 9);
    expect(numberIn(worked, 'gap_left', 'in')).toBeCloseTo(1.6 - (head - 10.25), 9);
  });

  test('comes to the gap to keep at the lowest that the tail may go', () => {
    const limit = numberIn(worked, 'drop_limit', 'in');
    const there = car({ drop_planned: `${limit} in` });
    expect(numberIn(there, 'gap_left', 'in')).toBeCloseTo(3 / 8, 9);
    expect(verdicts(there).drop_planned).toBe('pass');
  });

  test('carries engine, car and gearbox by hand', () => {
    expect(numberIn(worked, 'prop_load', 'lbf')).toBeCloseTo((480 * 2.5) / 9, 9);
    expect(numberIn(worked, 'stand_load', 'lb')).toBeCloseTo((3200 * 0.53) / 2, 9);
    expect(numberIn(worked, 'jack_reserve', '')).toBeCloseTo(450 / 165, 9);
  });

  test('passes every check of its own', () => {
    expect(new Set(Object.values(verdicts(worked)))).toEqual(new Set(['pass']));
  });
});

describe('three other cars', () => {
  test('a short engine under a low cowl, in millimetres', () => {
    const worked = car({
      mount_to_tail: '900 mm',
      tail_below: '0',
      head_reach: '200 mm',
      head_height: '300 mm',
      bulkhead_gap: '30 mm',
      keep_clear: '10 mm',
      drop_planned: '45 mm',
    });
    const tilt = Math.asin(45 / 900);
    const [head] = turn(200, 300, tilt);
    expect(numberIn(worked, 'tilt', 'rad')).toBeCloseTo(tilt, 12);
    expect(numberIn(worked, 'gap_left', 'mm')).toBeCloseTo(30 - (head - 200), 9);
    expect(verdicts(worked).drop_planned).toBe('pass');
  });

  test('a tail that stands above the mounts', () => {
    const worked = car({ tail_below: '-1.5', drop_planned: '2' });
    const [, tail] = turn(42, 1.5, numberIn(worked, 'tilt', 'rad'));
    expect(1.5 - tail).toBeCloseTo(2, 9);
  });

  test('a car that stands nose up on a floor that falls to the front', () => {
    const worked = car({
      floor_slope: '-1.0',
      gearbox_reading: '1.4',
      shaft_reading: '-0.6',
      pinion_reading: '-1.9',
    });
    expect(numberIn(worked, 'old_gearbox_slope', 'deg')).toBeCloseTo(2.4, 9);
    expect(numberIn(worked, 'old_shaft_slope', 'deg')).toBeCloseTo(0.4, 9);
    expect(numberIn(worked, 'old_front_joint', 'deg')).toBeCloseTo(2, 9);
    expect(numberIn(worked, 'pinion_slope', 'deg')).toBeCloseTo(-0.9, 9);
  });
});

describe('what people get wrong', () => {
  test('a floor that slopes changes every slope and no joint', () => {
    const [level, sloping] = [car({ floor_slope: '0' }), car({ floor_slope: '1.5' })];
    for (const joint of ['old_front_joint', 'old_rear_joint']) {
      expect(numberIn(sloping, joint, 'deg')).toBeCloseTo(numberIn(level, joint, 'deg'), 9);
    }
    const change =
      numberIn(level, 'old_shaft_slope', 'deg') - numberIn(sloping, 'old_shaft_slope', 'deg');
    expect(change).toBeCloseTo(1.5, 9);
  });

  test('a floor slope with its sign turned round disagrees with the heights', () => {
    expect(verdicts(car({ floor_slope: '-0.2' })).slopes_differ).toBe('fail');
  });

  test('the point on the head does not move as far as the tail does', () => {
    const worked = car();
    expect(numberIn(worked, 'head_moves', 'in')).toBeLessThan(3 / 2);
    expect(numberIn(worked, 'head_moves', 'in')).toBeCloseTo((3 * 15) / 42, 1);
  });

  test('a tall head and not a far one meets the bulkhead', () => {
    const moves = (entries: Entries) => numberIn(car(entries), 'head_moves', 'in');
    expect(moves({ head_height: '30' }) / moves({})).toBeCloseTo(2, 1);
    expect(moves({ head_reach: '20.5' }) / moves({})).toBeCloseTo(1, 1);
  });

  test('with less gap than is to be kept there is no drop at all, and the sheet says so', () => {
    const worked = car({ bulkhead_gap: '0.25' });
    const warnings = warningsOf(BOOK, worked.frame, cellIndex(BOOK, SHEET, 'drop_limit'));
    expect(warnings).toEqual([expect.stringContaining('no room to move')]);
    expect(verdicts(worked).drop_planned).toBe('fail');
  });

  test('a mass in pounds of force is refused', () => {
    expect(enter(car(), 'engine_mass', '480 lbf')).toMatchObject({ state: 'failed' });
  });

  test('the prop carries more the nearer it stands', () => {
    const load = (entries: Entries) => numberIn(car(entries), 'prop_load', 'lbf');
    expect(load({ prop_behind: '4.5' })).toBeCloseTo(2 * load({}), 9);
  });
});

describe('wires and fluids', () => {
  const rows = (table: string, column: string) => {
    const { value } = outcomeOf(BOOK, car().frame, cellIndex(BOOK, SHEET, table)) as {
      value: readonly { readonly cells: ReadonlyMap<string, string> }[];
    };
    return value.map(({ cells }) => cells.get(column)!);
  };

  test('each wire goes, stays or is spliced, and says what to do with it', () => {
    expect(new Set(rows('wires', 'sorted'))).toEqual(new Set(['goes', 'stays', 'spliced']));
    for (const action of rows('wires', 'action')) expect(action).toMatch(/^[a-z][^*]{9,}$/);
  });

  test('the starter inhibitor is never simply joined', () => {
    const place = rows('wires', 'wire').indexOf('Starter inhibitor');
    expect(rows('wires', 'action')[place]).toContain('never simply joined');
  });

  test('every fluid says where it runs out and what is done', () => {
    expect(rows('fluids', 'fluid').length).toBeGreaterThanOrEqual(5);
    expect(rows('fluids', 'action')).toHaveLength(rows('fluids', 'fluid').length);
  });
});

describe('windows', () => {
  testWindows(BOOK, SHEET, [
    ['gearbox_differs', 'above', { gearbox_again: '3.6' }, 'mark where the tool stood'],
    ['shaft_differs', 'above', { shaft_again: '2.3' }, 'half a turn apart'],
    ['pinion_differs', 'above', { pinion_again: '2.2' }, 'not its rim'],
    ['length_differs', 'above', { shaft_length_again: '47.60' }, 'instead of the middle'],
    ['slopes_differ', 'above', { floor_slope: '-0.2' }, 'a wrong sign of it the second'],
    ['plunge_in_old', 'below', { plunge_in_old: '0.70' }, 'near its bottom'],
    ['drop_planned', 'above', { drop_planned: '3.6' }, 'meets the bulkhead first'],
    ['fan_gap_left', 'below', { fan_gap: '1.1' }, 'bites the shroud'],
    ['stand_reserve', 'below', { stand_rating: '1600' }, 'Too light'],
    ['jack_reserve', 'below', { jack_rating: '200' }, 'Too light'],
    ['end_float', 'below', { end_float: '0.003' }, 'Read again'],
    ['end_float', 'above', { end_float: '0.013' }, 'thrust bearing is worn'],
  ]);
});

describe('practice', () => {
  testPractice(BOOK, SHEET, [
    ['The joint at the tail', 'The two slopes were added'],
    ['The joint at the tail', 'The floor was taken off the joint twice'],
    ['The joint at the tail', 'The floor was taken off once, from the shaft'],
    ['The joint at the tail', 'The floor was taken off once, from the gearbox'],
    ['The joint at the tail', 'That is the joint at the other end'],
    ['The head and the bulkhead', 'The point does not move as far as the tail does'],
    ['The head and the bulkhead', 'That is the reach of the point in place of its height'],
    ['The head and the bulkhead', 'The proportion stands on its head'],
    ['The head and the bulkhead', 'The gap to keep was taken off as well'],
    ['The head and the bulkhead', 'The sign is wrong'],
    ['The head and the bulkhead', 'That is how far the point moves back'],
    ['What the prop carries', 'That is the whole engine'],
    ['What the prop carries', 'That is what the mounts carry'],
    ['What the prop carries', 'The lever stands on its head'],
    ['What the prop carries', 'Halved'],
  ]);
});
