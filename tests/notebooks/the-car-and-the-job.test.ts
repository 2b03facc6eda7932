import { describe, expect, test } from 'vitest';
import {
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
const SHEET = '10-the-car-and-the-job';
const car = (entries: Entries = {}) => work(BOOK, SHEET, entries);

/** Torque in lbf·ft times revolutions a minute over this is horsepower: 33,000 over 2π. */
const PER_HORSEPOWER = 33000 / (2 * Math.PI);
const TORQUES = [118, 138, 152, 161, 165, 162, 154, 143, 128, 108];
const SPEEDS = TORQUES.map((_, i) => 1000 + 500 * i);

describe('the worked example', () => {
  const worked = car();

  test('weighs as many pounds of force as its mass has pounds', () => {
    expect(numberIn(worked, 'weight', 'lbf')).toBeCloseTo(3200, 9);
    expect(numberIn(worked, 'rear_weight', 'lbf')).toBeCloseTo(3200 * 0.47, 9);
  });

  test('has its power from torque and speed by hand', () => {
    const powers = SPEEDS.map((speed, i) => (speed * TORQUES[i]!) / PER_HORSEPOWER);
    numbersIn(worked, 'curve_power', 'hp').forEach((power, i) => {
      expect(power).toBeCloseTo(powers[i]!, 9);
    });
    expect(numberIn(worked, 'peak_torque', 'lbf·ft')).toBeCloseTo(165, 9);
    expect(numberIn(worked, 'peak_power', 'hp')).toBeCloseTo((143 * 4500) / PER_HORSEPOWER, 9);
  });

  test('reads its curve along straight lines', () => {
    const between = car({ engine_speed: '3250' });
    expect(numberIn(between, 'torque_there', 'lbf·ft')).toBeCloseTo((165 + 162) / 2, 9);
    expect(numberIn(between, 'power_there', 'hp')).toBeCloseTo((163.5 * 3250) / PER_HORSEPOWER, 9);
  });

  test('has the room in the tunnel that is left by hand', () => {
    const sides = [3.5, 3, 2.5, 1, 2].map((both) => both / 2);
    numbersIn(worked, 'side_room', 'in').forEach((room, i) => {
      expect(room).toBeCloseTo(sides[i]!, 9);
    });
    expect(numberIn(worked, 'least_room', 'in')).toBeCloseTo(0.5, 9);
  });

  test('fits in every line but the joint of the old shaft', () => {
    const { shaft_front_joint: joint, ...rest } = verdicts(worked);
    expect(joint).toBe('fail');
    expect(new Set(Object.values(rest))).toEqual(new Set(['pass']));
    expect(verdicts(car({ shaft_front_joint: '3 1/4' })).shaft_front_joint).toBe('pass');
  });
});

describe('other cars', () => {
  test('a large engine, its curve printed gross, reaches the other sheets net', () => {
    const worked = car({
      car_mass: '3950 lb',
      curve_speeds: '[1500, 2500, 3500, 4500]',
      stated_torques: '[270, 300, 285, 240]',
      rating: 'gross',
      stated_power: '206',
    });
    expect(numbersIn(worked, 'curve_torques', 'lbf·ft')).toEqual(
      [216, 240, 228, 192].map((torque) => expect.closeTo(torque, 9)),
    );
    expect(numberIn(worked, 'peak_power', 'hp')).toBeCloseTo((192 * 4500) / PER_HORSEPOWER, 9);
    expect(
      numberIn(
        work(BOOK, '30-torque-path', { '10-the-car-and-the-job/rating': 'gross' }),
        'engine_torque',
        'lbf·ft',
      ),
    ).toBeCloseTo(0.8 * 165, 9);
    expect(verdicts(worked).power_agreement).toBe('pass');
  });

  test('a light one in metric units is the same car', () => {
    const worked = car({
      car_mass: '980 kg',
      curve_speeds: '[1000, 3000, 5500]',
      stated_torques: '[90, 120, 100] N·m',
      stated_power: '57.6 kW',
      drag_area: '0.75 m^2',
      wheelbase: '2400 mm',
    });
    expect(numberIn(worked, 'weight', 'N')).toBeCloseTo(980 * 9.80665, 6);
    expect(numberIn(worked, 'peak_torque', 'N·m')).toBeCloseTo(120, 9);
    expect(numberIn(worked, 'peak_power', 'kW')).toBeCloseTo((100 * 5500 * 2 * Math.PI) / 60000, 9);
    expect(verdicts(worked).power_agreement).toBe('pass');
  });

  test('a wide gearbox touches the tunnel, and the sheet says where', () => {
    const worked = car({
      gearbox_widths: '[13, 10, 8.5, 9.25, 6.5]',
      tunnel_heights: '[8.5, 7, 5.25, 7, 6]',
    });
    expect(numbersIn(worked, 'side_room', 'in')[3]).toBeCloseTo(0.125, 9);
    expect(numbersIn(worked, 'top_room', 'in')[2]).toBeCloseTo(0.25, 9);
    expect(verdicts(worked)).toMatchObject({ side_room: 'fail', top_room: 'fail' });
    expect(numberIn(worked, 'least_room', 'in')).toBeCloseTo(0.125, 9);
  });
});

describe('what is not measured yet', () => {
  test.each([
    ['shaft_splines', 'hub_splines'],
    ['hub_splines', 'hub_splines'],
    ['spigot_diameter', 'pilot_room'],
    ['gearbox_pattern', 'housing_pattern'],
    ['crossmember_first', 'mount_position'],
    ['pinion_joint', 'shaft_rear_joint'],
    ['speedometer_takes', 'gearbox_gives'],
    ['tunnel_widths', 'side_room'],
    ['tunnel_clear_to', 'gearbox_length'],
  ])('%s left blank leaves %s unknown, and nothing else', (blank, line) => {
    const { [line]: found, ...rest } = verdicts(car({ [blank]: '' }));
    expect(found).toBe('unknown');
    const before = verdicts(car());
    expect(Object.keys(rest).filter((name) => rest[name] !== before[name])).toEqual([]);
  });
});

describe('pounds', () => {
  test('of force typed where mass belongs are refused', () => {
    expect(enter(car(), 'car_mass', '3200 lbf')).toMatchObject({
      state: 'failed',
      problem: { message: expect.stringMatching(/force.*mass|mass.*force/) },
    });
  });

  test('of mass typed where a force belongs are refused', () => {
    const pedal = work(BOOK, '80-pedal-and-hydraulics');
    expect(enter(pedal, 'clamp_peak', '1400 lb')).toMatchObject({ state: 'failed' });
    expect(enter(pedal, 'clamp_peak', '1400 lbf')).toMatchObject({ state: 'value' });
  });

  test('of force push a pound of mass with 32.17 ft/s²', () => {
    const worked = car();
    const force = numberIn(worked, 'weight', 'lbf');
    const acceleration = numberIn(worked, 'weight', 'N') / numberIn(worked, 'car_mass', 'kg');
    expect((acceleration / 0.3048) * (3200 / force)).toBeCloseTo(32.174, 3);
  });
});

describe('gross and net', () => {
  test('are told apart by the plate: a gross curve under a net plate promises too much', () => {
    const gross = `[${TORQUES.map((torque) => torque / 0.8).join(', ')}]`;
    expect(verdicts(car({ stated_torques: gross })).power_agreement).toBe('fail');
    expect(verdicts(car({ stated_torques: gross, stated_power: '153' })).power_agreement).toBe(
      'pass',
    );
  });

  test('differ by the share in the table, and a net curve passes through unchanged', () => {
    expect(numberIn(car({ rating: 'gross' }), 'peak_torque', 'lbf·ft')).toBeCloseTo(132, 9);
    expect(numberIn(car({ rating: 'DIN' }), 'peak_torque', 'lbf·ft')).toBeCloseTo(165, 9);
  });

  test('are not told apart by metric horsepower, which is 1.4 % less', () => {
    const agreement = numberIn(car({ stated_power: '125 PS' }), 'power_agreement', '%');
    expect(agreement).toBeCloseTo((100 * 125 * 735.49875) / 745.6998715822702 / 122.5221135, 4);
    expect(verdicts(car({ stated_power: '125 PS' })).power_agreement).toBe('pass');
  });
});

describe('entries', () => {
  test('thousandths and millimetres in a field of inches are what they say', () => {
    expect(numberIn(car({ spigot_diameter: '590 thou' }), 'pilot_room', 'in')).toBeCloseTo(0.41, 9);
    expect(numberIn(car({ crank_bore: '25.4 mm' }), 'pilot_room', 'in')).toBeCloseTo(0.41, 9);
  });

  test('a curve with a torque too few is refused where it is multiplied, and not before', () => {
    const worked = car({ stated_torques: '[118, 138, 152]' });
    expect(() => numbersIn(worked, 'curve_power', 'hp')).toThrow(/10.*3|3.*10/);
    expect(numberIn(worked, 'peak_torque', 'lbf·ft')).toBeCloseTo(152, 9);
  });

  test('an engine speed beyond the curve has no torque', () => {
    expect(() => numberIn(car({ engine_speed: '6000' }), 'torque_there', 'lbf·ft')).toThrow();
  });
});

testWindows(BOOK, SHEET, [
  ['new_cruise', 'above', { noise_budget: '1900' }, 'Busier than was agreed'],
  ['power_agreement', 'below', { stated_power: '115' }, 'curve gross and the plate net'],
  ['power_agreement', 'above', { stated_power: '130' }, 'plate gross and the curve net'],
  ['hub_splines', 'below', { hub_splines: '10' }, 'Fewer in the hub'],
  ['hub_splines', 'above', { hub_splines: '29' }, 'More in the hub'],
  ['hub_diameter', 'below', { hub_diameter: '1 1/16' }, 'too small to go on'],
  ['hub_diameter', 'above', { hub_diameter: '1 3/16' }, 'loose on the shaft'],
  ['pilot_room', 'below', { crank_bore: '0.600' }, 'No room for a bush'],
  ['pilot_room', 'above', { crank_bore: '1.375' }, 'a sleeve in the crank'],
  ['housing_pattern', 'unlike', { housing_pattern: '4 bolts M10' }, 'Another housing'],
  ['collar_play', 'below', { housing_bore: '4.682' }, 'Never draw a gearbox home'],
  ['collar_play', 'above', { housing_bore: '4.690' }, 'does not centre'],
  ['mount_position', 'below', { mount_position: '24' }, 'offset crossmember'],
  ['mount_position', 'above', { mount_position: '31' }, 'set further back'],
  ['yoke_splines', 'below', { yoke_splines: '25' }, 'Another slip yoke'],
  ['yoke_splines', 'above', { yoke_splines: '32' }, 'Another slip yoke'],
  ['shaft_front_joint', 'below', { shaft_front_joint: '2 7/8' }, 'smaller one'],
  ['shaft_front_joint', 'above', {}, 'larger one'],
  ['shaft_rear_joint', 'below', { shaft_rear_joint: '3 1/4' }, 'another pinion yoke'],
  ['shaft_rear_joint', 'above', { shaft_rear_joint: '4' }, 'another pinion yoke'],
  ['gearbox_gives', 'unlike', { gearbox_gives: 'pulses' }, 'converter box'],
  ['gearbox_length', 'above', { tunnel_clear_to: '32' }, 'reach under a bracket'],
  ['side_room', 'below', { tunnel_widths: '[13.5, 13, 11, 9.5, 8.5]' }, 'rocks on its mounts'],
  ['top_room', 'below', { tunnel_heights: '[8.5, 7, 6.5, 6.25, 6]' }, 'touch above'],
]);

testPractice(BOOK, SHEET, [
  ['Power from torque', 'A turn is 2π'],
  ['Power from torque', '9,549'],
  ['Power from torque', 'one family'],
  ['Power from torque', 'metric horses'],
  ['The load on the driven axle', 'front axle'],
  ['The load on the driven axle', 'twice'],
  ['The load on the driven axle', 'slugs'],
  ['The load on the driven axle', 'one of its two'],
  ['Gross and net', 'bare engine'],
  ['Gross and net', 'smaller of the two'],
  ['Gross and net', 'auxiliaries'],
]);
