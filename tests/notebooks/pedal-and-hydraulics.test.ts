import { describe, expect, test } from 'vitest';
import { type Entries, enter, numberIn, openNotebooks, work } from '../support/notebooks.ts';
import { testPractice } from '../support/practice.ts';
import { verdicts } from '../support/verdicts.ts';
import { testWindows } from '../support/windows.ts';

const BOOK = openNotebooks();
const SHEET = '80-pedal-and-hydraulics';
const pedal = (entries: Entries = {}) => work(BOOK, SHEET, entries);

const MASTER = (Math.PI / 4) * (0.875 * 25.4) ** 2;
const RING = (Math.PI / 4) * (50.8 ** 2 - 34.93 ** 2);
const RATIO = 11.5 / 2;
const LOSS = 0.05 * 25.4 + 200 / MASTER;
/** Pad travel in mm for a bearing travel in mm. */
const padFor = (travel: number) => ((travel * RING) / MASTER + LOSS) * RATIO + 6.35;

describe('the worked example', () => {
  const worked = pedal();
  const free = 3.5 * 0.09 * 25.4;
  const needed = 3.7 * 0.09 * 25.4;
  const limit = 0.375 * 25.4;

  test('frees the disc where it should by hand', () => {
    expect(numberIn(worked, 'travel_to_free', 'mm')).toBeCloseTo(free, 9);
    expect(numberIn(worked, 'pad_to_free', 'mm')).toBeCloseTo(padFor(free), 9);
    expect(numberIn(worked, 'pad_at_limit', 'mm')).toBeCloseTo(padFor(limit), 9);
  });

  test('has its stop half-way between enough and too much', () => {
    const pad = padFor((needed + limit) / 2);
    expect(numberIn(worked, 'pad_at_stop', 'mm')).toBeCloseTo(pad, 9);
    expect(numberIn(worked, 'stop_length', 'mm')).toBeCloseTo(6.75 * 25.4 - (pad * 9) / 11.5, 9);
    const slack = ((padFor(limit) - padFor(needed)) / 2) * (9 / 11.5);
    expect(numberIn(worked, 'stop_tolerance', 'mm')).toBeCloseTo(slack, 9);
  });

  test('weighs at the pad what clamp and areas make it', () => {
    const load = (1400 * 4.4482216152605) / 3.5;
    expect(numberIn(worked, 'line_pressure', 'MPa')).toBeCloseTo(load / RING, 9);
    expect(numberIn(worked, 'pad_force', 'N')).toBeCloseTo(
      (load * MASTER) / RING / RATIO / 0.85,
      7,
    );
  });

  test('passes every check of its own, and wants its stop', () => {
    expect(new Set(Object.values(verdicts(worked)))).toEqual(new Set(['pass']));
    expect(numberIn(worked, 'floor_goes_over_by', 'in')).toBeGreaterThan(0);
  });
});

test('a thou of the disc’s cushion is a sixteenth of an inch at the pad', () => {
  const pad = (free: string) =>
    numberIn(pedal({ '70-release-bearing/disc_free': free }), 'pad_to_free', 'in');
  expect(16 * (pad('0.331') - pad('0.330'))).toBeCloseTo(1, 0);
});

test('the hole of the ring is subtracted', () => {
  const [ring, plain] = [pedal(), pedal({ slave_hole: '0' })];
  expect(numberIn(plain, 'area_ratio', '')).toBeCloseTo(
    numberIn(ring, 'ratio_without_hole', ''),
    9,
  );
  expect(verdicts(plain).area_ratio).toBe('fail');
});

test('pad travel has free play and cut-off in it', () => {
  const none = pedal({ free_play: '0', cut_off: '0', hose_swell: '0' });
  const travel = numberIn(none, 'travel_to_free', 'mm');
  expect(numberIn(none, 'pad_to_free', 'mm')).toBeCloseTo(((travel * RING) / MASTER) * RATIO, 9);
  expect(numberIn(none, 'pad_to_free', 'mm')).toBeLessThan(padFor(travel) - 15);
});

describe('the stop', () => {
  test('as long as reckoned puts the bearing where it was reckoned', () => {
    const length = numberIn(pedal(), 'stop_length', 'mm');
    const worked = pedal({ stop_as_made: `${length} mm` });
    const wanted = numberIn(worked, 'travel_at_stop', 'mm');
    expect(numberIn(worked, 'travel_as_made', 'mm')).toBeCloseTo(wanted, 9);
  });

  test.each([
    ['longest_stop', 'travel_needed'],
    ['shortest_stop', 'travel_limit'],
  ])('at its %s brings the bearing to %s', (end, travel) => {
    const length = numberIn(pedal(), end, 'mm');
    const worked = pedal({ stop_as_made: `${length} mm` });
    expect(numberIn(worked, 'travel_as_made', 'mm')).toBeCloseTo(numberIn(worked, travel, 'mm'), 9);
  });

  test('too short or too long fails, both ways', () => {
    const bad = { stop_as_made: 'fail', travel_as_made: 'fail' };
    expect(verdicts(pedal({ stop_as_made: '1.5' }))).toMatchObject(bad);
    expect(verdicts(pedal({ stop_as_made: '2.25' }))).toMatchObject(bad);
  });

  test('goes by the bearing where that ends before the fingers do', () => {
    const worked = pedal({ '70-release-bearing/bearing_stroke': '0.560' });
    expect(numberIn(worked, 'travel_limit', 'in')).toBeCloseTo(0.56 - 0.165 - 0.04, 9);
  });

  test('cannot be made where the fingers allow less than frees the disc', () => {
    const worked = pedal({ finger_limit: '0.300' });
    expect(numberIn(worked, 'room_for_stop', 'in')).toBeLessThan(0);
    expect(verdicts(worked).room_for_stop).toBe('fail');
  });
});

test('the pedal does not move the bearing until play and cut-off are gone', () => {
  expect(numberIn(pedal({ pad_travel: '0.2' }), 'bearing_travel', 'mm')).toBe(0);
  const there = pedal({ pad_travel: `${padFor(8)} mm` });
  expect(numberIn(there, 'bearing_travel', 'mm')).toBeCloseTo(8, 9);
});

describe('air', () => {
  test('is nearly all lost, less in a fast press', () => {
    const worked = pedal();
    expect(numberIn(worked, 'air_lost', 'mL')).toBeGreaterThan(0.9);
    expect(numberIn(worked, 'air_lost_fast', 'mL')).toBeLessThan(
      numberIn(worked, 'air_lost', 'mL'),
    );
  });

  test('of none costs nothing', () => {
    expect(numberIn(pedal({ trapped_air: '0' }), 'air_costs_travel', 'mm')).toBe(0);
  });

  test('of just too much leaves the travel that just frees', () => {
    const bubble = numberIn(pedal(), 'air_too_much', 'mL');
    const worked = pedal({ trapped_air: `${bubble} mL` });
    const free = numberIn(worked, 'travel_to_free', 'mm');
    expect(numberIn(worked, 'travel_with_air', 'mm')).toBeCloseTo(free, 9);
  });

  test('of two millilitres keeps the disc from coming free', () => {
    expect(verdicts(pedal({ trapped_air: '2' })).travel_with_air).toBe('fail');
  });
});

describe('three other cars', () => {
  test('a small master is light and long', () => {
    const worked = pedal({ master_bore: '5/8' });
    expect(verdicts(worked)).toMatchObject({ pad_at_stop: 'fail', pad_force: 'fail' });
    expect(numberIn(worked, 'pad_force', 'N')).toBeLessThan(90);
  });

  test('a large master is short and heavy', () => {
    const worked = pedal({ master_bore: '1 1/8' });
    expect(numberIn(worked, 'pad_at_stop', 'mm')).toBeLessThan(120);
    expect(numberIn(worked, 'pad_force', 'N')).toBeGreaterThan(160);
  });

  test('a heavier cover is heavier in the same measure, and goes no further', () => {
    const [light, heavy] = [pedal({ clamp_peak: '1000' }), pedal({ clamp_peak: '2000' })];
    const [one, two] = [light, heavy].map((worked) => numberIn(worked, 'pad_force', 'N'));
    expect(two).toBeCloseTo(2 * one!, 9);
    expect(numberIn(heavy, 'pad_at_stop', 'mm')).toBe(numberIn(light, 'pad_at_stop', 'mm'));
  });
});

describe('entries', () => {
  test('thousandths typed in a field of millimetres are thousandths', () => {
    expect(enter(pedal(), 'slave_bore', '2000 thou')).toMatchObject({
      state: 'value',
      explicit: true,
    });
    expect(numberIn(pedal({ slave_bore: '2000 thou' }), 'slave_area', 'mm^2')).toBeCloseTo(RING, 9);
  });

  test('thousandths typed there without their unit are millimetres, and the window shows it', () => {
    expect(verdicts(pedal({ slave_bore: '2000' })).area_ratio).toBe('fail');
  });

  test('pounds of force and newtons are the same clamp', () => {
    const pounds = numberIn(pedal({ clamp_peak: '1000 lbf' }), 'pad_force', 'N');
    expect(numberIn(pedal({ clamp_peak: '4448.2216152605 N' }), 'pad_force', 'N')).toBeCloseTo(
      pounds,
      9,
    );
  });
});

describe('windows', () => {
  testWindows(BOOK, SHEET, [
    ['area_ratio', 'below', { master_bore: '1 1/8' }, 'a heavy pedal'],
    ['area_ratio', 'above', { slave_hole: '0' }, 'the hole forgotten'],
    ['travel_to_free', 'below', { '70-release-bearing/lever_ratio': '2.5' }, 'Less than any usual'],
    ['travel_to_free', 'above', { '70-release-bearing/lever_ratio': '6' }, 'More than a usual'],
    ['room_for_stop', 'below', { finger_limit: '0.340' }, 'hand-made stop'],
    ['lift_at_stop', 'below', { finger_limit: '0.120' }, 'drags as soon as it is warm'],
    ['lift_at_stop', 'above', { finger_limit: '0.450' }, 'the fingers and the pivot ring'],
    ['pad_at_stop', 'below', { master_bore: '1 1/8' }, 'Short and sudden'],
    ['pad_at_stop', 'above', { master_bore: '5/8' }, 'More than a leg likes'],
    ['pad_in_hand', 'below', { finger_limit: '0.355' }, 'gears will grate'],
    ['stroke_at_stop', 'above', { master_stroke: '1.0' }, 'master bottoms'],
    ['free_play', 'above', { free_play: '1/2' }, 'Travel given away'],
    ['stop_length', 'below', { arm_to_panel: '5' }, 'Too short to hold'],
    ['stop_as_made', 'below', { stop_as_made: '1.5' }, 'Pack it out'],
    ['stop_as_made', 'above', { stop_as_made: '2.25' }, 'Cut it back'],
    ['travel_as_made', 'below', { stop_as_made: '2.25' }, 'May drag'],
    ['travel_as_made', 'above', { stop_as_made: '1.5' }, 'Past what the fingers'],
    ['pad_force', 'below', { master_bore: '5/8' }, 'a foot rests on it'],
    ['pad_force', 'above', { master_bore: '1 1/8' }, 'Heavy in traffic'],
    ['travel_with_air', 'below', { trapped_air: '2' }, 'That is air'],
  ]);
});

describe('practice', () => {
  testPractice(BOOK, SHEET, [
    ['From the pad to the bearing', 'The hole is forgotten'],
    ['From the pad to the bearing', 'The free play was not taken off'],
    ['From the pad to the bearing', 'The cut-off was not taken off'],
    ['From the pad to the bearing', 'The pedal ratio is left out'],
    ['From the pad to the bearing', 'The hose is left out'],
    ['From the pad to the bearing', 'The areas stand on their heads'],
    ['From the pad to the bearing', 'Diameters in place of areas'],
    ['How long the stop is', 'The arm does not move as far there as the pad'],
    ['How long the stop is', 'The proportion stands on its head'],
    ['How long the stop is', 'That is how far the arm moves'],
    ['How long the stop is', 'That is the travel at the pushrod'],
    ['What the foot feels', 'own lever is left out'],
    ['What the foot feels', 'Friction is left out'],
    ['What the foot feels', 'Multiplied by the efficiency'],
    ['What the foot feels', 'That is the force of the pushrod'],
    ['What the foot feels', 'The hole is forgotten'],
    ['What the foot feels', 'The areas are left out'],
  ]);
});
