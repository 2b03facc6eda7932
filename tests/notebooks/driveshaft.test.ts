import { describe, expect, test } from 'vitest';
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
const SHEET = '110-driveshaft';
const shaft = (entries: Entries = {}) => work(BOOK, SHEET, entries);

/** Whirl of a steel tube in rpm, from inches, by the formula as a book has it: I, A and mass a length. */
function whirl(od: number, wall: number, length: number, modulus = 205e9, density = 7850): number {
  const [outer, bore, long] = [od, od - 2 * wall, length].map((inches) => inches * 0.0254);
  const area = (Math.PI / 4) * (outer! ** 2 - bore! ** 2);
  const bending = (Math.PI / 64) * (outer! ** 4 - bore! ** 4);
  const speed = (Math.PI / long!) ** 2 * Math.sqrt((modulus * bending) / (density * area));
  return (speed * 30) / Math.PI;
}

/** Inches of road that a wheel covers in a turn, and wheel turns a minute at a road speed in mph. */
const ROLLED = 3.05 * (15 + (2 * 205 * 0.6) / 25.4);
const wheel = (mph: number) => (mph * 63360) / 60 / ROLLED;

describe('the worked example', () => {
  const worked = shaft();

  test('has its length by both ways as by hand', () => {
    const seal = 2.45 + 0.875;
    const fromOld = 47.5 + 30.9 - 32.35 + 3.25 - seal;
    expect(numberIn(worked, 'length_from_old', 'in')).toBeCloseTo(fromOld, 9);
    expect(numberIn(worked, 'length_from_faces', 'in')).toBeCloseTo(49.31 - seal, 9);
    expect(numberIn(worked, 'lengths_differ', 'in')).toBeCloseTo(0.01, 9);
    expect(numberIn(worked, 'shaft_length_new', 'in')).toBeCloseTo(45.985, 9);
  });

  test('has its spline engaged at ride height, bump and droop as by hand', () => {
    expect(numberIn(worked, 'engaged_at_ride', 'in')).toBeCloseTo(3.55 - 0.875, 9);
    expect(numberIn(worked, 'engaged_at_bump', 'in')).toBeCloseTo(3.55 - 0.875 + 0.3, 9);
    expect(numberIn(worked, 'engaged_at_droop', 'in')).toBeCloseTo(3.55 - 0.875 - 0.45, 9);
    expect(numberIn(worked, 'engaged_diameters', '')).toBeCloseTo(2.225 / 1.38, 9);
    expect(numberIn(worked, 'room_at_bump', 'in')).toBeCloseTo(0.875 - 0.3, 9);
  });

  test('whirls where the formula of the books says', () => {
    const speed = whirl(3, 0.083, 45.985);
    expect(numberIn(worked, 'critical_speed', 'rpm')).toBeCloseTo(speed, 6);
    expect(numberIn(worked, 'half_critical', 'rpm')).toBeCloseTo(speed / 2, 6);
    expect(numberIn(worked, 'band_low', 'mph')).toBeCloseTo(
      ((0.92 * speed) / 2 / 3.25 / wheel(1)) * 1,
      6,
    );
    expect(numberIn(worked, 'band_high', 'mph')).toBeCloseTo(
      (1.08 * speed) / 2 / 3.25 / wheel(1),
      6,
    );
  });

  test('turns as fast as gearing and road allow', () => {
    const reach = numberIn(worked, '25-what-it-will-feel-like/top_speed', 'mph');
    expect(numberIn(worked, 'fastest_by_gearing', 'rpm')).toBeCloseTo(5500 / 0.74, 9);
    const byRoad = wheel(reach + 10) * 3.25;
    expect(numberIn(worked, 'fastest_by_road', 'rpm')).toBeCloseTo(byRoad, 6);
    expect(numberIn(worked, 'fastest_shaft', 'rpm')).toBeCloseTo(byRoad, 6);
    expect(numberIn(worked, 'shaft_at_cruise', 'rpm')).toBeCloseTo(wheel(70) * 3.25, 9);
    const critical = whirl(3, 0.083, 45.985);
    expect(numberIn(worked, 'road_share', '')).toBeCloseTo(byRoad / critical, 9);
    expect(numberIn(worked, 'gearing_share', '')).toBeCloseTo(5500 / 0.74 / critical, 9);
  });

  test('bears and weighs what its section makes it', () => {
    const [outer, bore] = [3, 2.834];
    const polar = (Math.PI / 32) * (outer ** 4 - bore ** 4);
    const shear = (0.577 * 350) / 0.006894757293168361;
    const bears = (shear * polar) / (outer / 2) / 12;
    expect(numberIn(worked, 'tube_torque_capacity', 'lbf·ft')).toBeCloseTo(bears, 4);
    const grams = ((7850 * Math.PI) / 4) * (outer ** 2 - bore ** 2) * (45.985 - 3.8) * 0.0254 ** 3;
    expect(numberIn(worked, 'tube_mass', 'kg')).toBeCloseTo(grams, 9);
    expect(numberIn(worked, 'shaft_mass', 'lb')).toBeCloseTo(grams / 0.45359237 + 9.5, 9);
  });

  test('orders what has been worked', () => {
    expect(numberIn(worked, 'order_length', 'in')).toBeCloseTo(46, 9);
    expect(numberIn(worked, 'order_speed', 'rpm')).toBeCloseTo(6000, 9);
    expect(numberIn(worked, 'order_phase', 'deg')).toBe(0);
    // G 16: 16 mm/s over the turning speed is the offset of the mass; half of it to each end.
    const offset = 16 / ((6000 * Math.PI) / 30);
    const mass = numberIn(worked, 'shaft_mass', 'kg') * 1000;
    expect(numberIn(worked, 'order_unbalance', 'g*mm')).toBeCloseTo((mass * offset) / 2, 6);
  });

  test('passes every check of its own', () => {
    expect(new Set(Object.values(verdicts(worked)))).toEqual(new Set(['pass']));
  });
});

describe('three other cars', () => {
  test('a longer gearbox makes a shorter shaft by as much, both ways, and it whirls later', () => {
    const worked = shaft({ output_end_new: '34.35', seal_to_pinion: '47.31' });
    expect(numberIn(worked, 'length_from_old', 'in')).toBeCloseTo(43.975, 9);
    expect(numberIn(worked, 'length_from_faces', 'in')).toBeCloseTo(43.985, 9);
    expect(numberIn(worked, 'critical_speed', 'rpm')).toBeCloseTo(whirl(3, 0.083, 43.985), 6);
  });

  test('a long thin shaft fails where the same in a larger tube passes', () => {
    const long = { seal_to_pinion: '63.325', output_end_new: '18.34' };
    const thin = shaft({ ...long, tube_od: '2.5', tube_wall: '0.065' });
    expect(numberIn(thin, 'critical_speed', 'rpm')).toBeCloseTo(whirl(2.5, 0.065, 60), 6);
    expect(verdicts(thin)).toMatchObject({ road_share: 'fail', gearing_share: 'fail' });
    const thick = shaft({ ...long, tube_od: '5', tube_wall: '0.083' });
    expect(numberIn(thick, 'critical_speed', 'rpm')).toBeCloseTo(whirl(5, 0.083, 60), 6);
    expect(verdicts(thick)).toMatchObject({ road_share: 'pass', gearing_share: 'pass' });
  });

  test('aluminium of the same size is a third of the weight and whirls alike', () => {
    const [steel, light] = [shaft(), shaft({ tube_material: 'Aluminium 6061-T6' })];
    const masses = [steel, light].map((worked) => numberIn(worked, 'tube_mass', 'lb'));
    expect(masses[1]! / masses[0]!).toBeCloseTo(2710 / 7850, 9);
    const speed = whirl(3, 0.083, 45.985, 68.9e9, 2710);
    expect(numberIn(light, 'critical_speed', 'rpm')).toBeCloseTo(speed, 6);
    expect(speed / whirl(3, 0.083, 45.985)).toBeCloseTo(0.987, 3);
  });

  test('a carbon tube waits for its maker', () => {
    const table = shaft({ tube_material: 'Carbon tube' });
    const index = cellIndex(BOOK, SHEET, 'axial_modulus');
    expect(warningsOf(BOOK, table.frame, index)[0]).toContain('Enter what its maker states');
    const stated = shaft({
      tube_material: 'Carbon tube',
      maker_modulus: '90',
      maker_torque: '900',
    });
    expect(warningsOf(BOOK, stated.frame, index)).toEqual([]);
    expect(numberIn(stated, 'critical_speed', 'rpm')).toBeCloseTo(
      whirl(3, 0.083, 45.985, 90e9, 1600),
      6,
    );
    expect(numberIn(stated, 'tube_torque_capacity', 'lbf·ft')).toBeCloseTo(900, 9);
  });

  test('a metric car is the same car', () => {
    const metric = shaft({
      output_end_new: '821.69 mm',
      yoke_bottomed: '62.23 mm',
      set_back: '22.225 mm',
      seal_to_pinion: '1252.474 mm',
      tube_od: '76.2 mm',
      tube_wall: '2.1082 mm',
    });
    const inches = shaft();
    for (const name of ['critical_speed', 'length_from_old', 'tube_torque_capacity'])
      expect(numberIn(metric, name, '')).toBeCloseTo(numberIn(inches, name, ''), 9);
  });
});

describe('overdrive makes the shaft turn faster than the engine', () => {
  test('by what its ratio is below 1', () => {
    expect(numberIn(shaft(), 'faster_than_engine', '')).toBeCloseTo(1 / 0.74 - 1, 12);
  });

  test('and a 1:1 gear that is not the top gear does not set the shaft’s speed', () => {
    const worked = shaft();
    const speeds = numbersIn(worked, 'shaft_speed_at_redline', 'rpm');
    expect(speeds[3]).toBeCloseTo(5500, 9);
    expect(numberIn(worked, 'fastest_by_gearing', 'rpm')).toBeCloseTo(Math.max(...speeds), 9);
    expect(Math.max(...speeds)).toBeGreaterThan(7000);
  });

  test('whichever way the ratios are listed', () => {
    const listed = (gear_ratios: string) =>
      numberIn(shaft({ '20-gearing/gear_ratios': gear_ratios }), 'fastest_by_gearing', 'rpm');
    expect(listed('[0.74, 1.00, 1.35, 1.95, 3.15]')).toBe(listed('[3.15, 1.95, 1.35, 1.00, 0.74]'));
  });

  test('with a direct top gear it does not', () => {
    const worked = shaft({ '20-gearing/gear_ratios': '[3, 2, 1.4, 1]' });
    expect(numberIn(worked, 'faster_than_engine', '')).toBeCloseTo(0, 12);
  });
});

describe('slip plunge measured at full droop', () => {
  test('gives a shaft that is too long by the way out, and its set-back is gone', () => {
    const worked = shaft();
    expect(numberIn(worked, 'length_at_droop', 'in')).toBeCloseTo(45.985 + 0.45, 9);
    expect(numberIn(worked, 'left_by_droop', 'in')).toBeCloseTo(0.875 - 0.45, 9);
    expect(numberIn(worked, 'left_by_droop_at_bump', 'in')).toBeCloseTo(0.875 - 0.45 - 0.3, 9);
  });

  test('with the axle hanging when the faces were taken, the two ways disagree and say why', () => {
    const worked = shaft({ seal_to_pinion: '49.76' });
    expect(verdicts(worked).lengths_differ).toBe('fail');
  });

  test('of a long-travel axle makes a shaft that bottoms', () => {
    const worked = shaft({ joint_at_droop: '4.05', joint_at_bump: '2.75' });
    expect(numberIn(worked, 'left_by_droop_at_bump', 'in')).toBeLessThan(0);
  });

  test('an axle that draws the yoke out on bump is worked as it is', () => {
    const worked = shaft({ joint_at_bump: '3.60', joint_at_droop: '3.05' });
    expect(numberIn(worked, 'plunge_in', 'in')).toBeCloseTo(0.2, 9);
    expect(numberIn(worked, 'plunge_out', 'in')).toBeCloseTo(0.35, 9);
  });
});

describe('lumping the mass', () => {
  test.each([
    ['as it is', {}],
    ['longer', { seal_to_pinion: '60' }],
    ['of aluminium', { tube_material: 'Aluminium 6061-T6' }],
    ['thick', { tube_wall: '0.25' }],
  ] as const)('gives 0.70 of the right speed, %s', (_, entries) => {
    // √48 / π²: stiffness 48EI/L³ under the whole mass, against the half sine of the tube alone.
    expect(numberIn(shaft(entries), 'lumped_share', '')).toBeCloseTo(
      Math.sqrt(48) / Math.PI ** 2,
      9,
    );
  });

  test('of what really sits on the tube is another matter: it lowers the speed', () => {
    const ring = shaft({ ring_mass: '3', ring_place: '23' });
    const bare = numberIn(ring, 'critical_speed', 'rpm');
    expect(numberIn(ring, 'critical_with_ring', 'rpm')).toBeLessThan(0.97 * bare);
    expect(numberIn(shaft(), 'critical_with_ring', 'rpm')).toBeCloseTo(bare, 9);
  });
});

test('the wall hardly matters to the speed, and matters to the torque', () => {
  const [thin, thick] = [shaft({ tube_wall: '0.065' }), shaft({ tube_wall: '0.120' })];
  const ratio = (name: string) => numberIn(thick, name, '') / numberIn(thin, name, '');
  expect(ratio('critical_speed')).toBeCloseTo(1, 1);
  expect(ratio('tube_torque_capacity')).toBeGreaterThan(1.6);
});

test('the longest shaft for a tube whirls just where this car asks for', () => {
  const worked = shaft();
  const lengths = numbersIn(worked, 'longest_by_tube', 'in');
  const tubes = [
    [2, 0.065],
    [2.5, 0.065],
    [3, 0.083],
    [3.5, 0.083],
    [4, 0.083],
  ] as const;
  tubes.forEach(([od, wall], i) => {
    const asked = numberIn(worked, 'wanted_critical', 'rpm');
    expect(whirl(od, wall, lengths[i]!)).toBeCloseTo(asked, 6);
  });
});

test('yokes that are to be turned are ordered turned', () => {
  const worked = shaft({ '100-mount-and-joint-angles/yokes_out': '13' });
  expect(numberIn(worked, 'order_phase', 'deg')).toBeCloseTo(13, 9);
});

test('thousandths typed in a field of inches without a unit are inches, and are told', () => {
  expect(verdicts(shaft({ tube_wall: '83' })).torque_reserve).toBe('unknown');
  expect(numberIn(shaft({ tube_wall: '83 thou' }), 'tube_bore', 'in')).toBeCloseTo(2.834, 9);
});

describe('windows', () => {
  testWindows(BOOK, SHEET, [
    ['set_back', 'below', { set_back: '1/2' }, 'Order the shaft shorter'],
    ['set_back', 'above', { set_back: '1 1/4' }, 'Order the shaft longer'],
    ['lengths_differ', 'below', { seal_to_pinion: '49.15' }, 'rubber of the seal'],
    ['lengths_differ', 'above', { seal_to_pinion: '49.76' }, 'an axle that hung'],
    ['room_at_bump', 'below', { joint_at_bump: '2.5' }, 'More set-back'],
    ['engaged_diameters', 'below', { spline_bottomed: '3.3' }, 'A longer yoke'],
    ['road_share', 'above', { tube_od: '2.25' }, 'tube of larger diameter'],
    ['gearing_share', 'above', { tube_od: '2.25' }, 'order a larger tube'],
    ['cruise_off_half', 'below', { '20-gearing/cruise_speed': '100' }, 'moves the band away'],
    [
      'torque_reserve',
      'below',
      { tube_od: '2', tube_wall: '0.049' },
      'larger tube or a thicker wall',
    ],
    ['joint_reserve', 'below', { joint_rating: '300' }, 'The next series up'],
  ]);
});

describe('practice', () => {
  testPractice(BOOK, SHEET, [
    ['How fast does the shaft turn?', 'so divide'],
    ['How fast does the shaft turn?', 'That is the engine'],
    ['How fast does the shaft turn?', 'Those are the wheels'],
    ['When does it whirl?', '0.70 of it'],
    ['When does it whirl?', 'for the bare tube'],
    ['When does it whirl?', 'The bore is missing'],
    ['When does it whirl?', 'squared'],
    ['Read with the axle hanging', 'As it hung'],
    ['Read with the axle hanging', 'No set-back'],
    ['Read with the axle hanging', 'The wrong way'],
    ['Read with the axle hanging', 'from the seal'],
  ]);
});
