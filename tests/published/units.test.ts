import { describe, expect, test } from 'vitest';
import { multiplyDimensions, nameDimension } from '../../src/units/dimension.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

/** NIST SP 811, appendix B.8, seven digits as printed, read second-hand; the yard from memory. */
const SP_811: readonly (readonly [unit: string, si: string, factor: number])[] = [
  ['in', 'm', 0.0254],
  ['ft', 'm', 0.3048],
  ['yd', 'm', 0.9144],
  ['mi', 'm', 1609.344],
  ['mph', 'm/s', 0.44704],
  ['mph', 'km/h', 1.609344],
  ['lb', 'kg', 0.4535924],
  ['oz', 'kg', 0.02834952],
  ['lbf', 'N', 4.448222],
  ['kgf', 'N', 9.80665],
  ['lbf·ft', 'N·m', 1.355818],
  ['lbf·in', 'N·m', 0.1129848],
  ['kgf·m', 'N·m', 9.80665],
  ['psi', 'Pa', 6894.757],
  ['bar', 'Pa', 100_000],
  ['hp', 'W', 745.6999],
  ['PS', 'W', 735.4988],
  ['lb/in^3', 'kg/m^3', 27_679.9],
  ['lb/ft^3', 'kg/m^3', 16.01846],
  ['in^3', 'm^3', 1.638706e-5],
  ['rpm', 'rad/s', 0.1047198],
  ['deg', 'rad', 0.01745329],
];

/** Worked here from the exact inch, pound and standard acceleration of free fall. */
const EXACT: readonly (readonly [unit: string, si: string, factor: number])[] = [
  ['thou', 'm', 0.0000254],
  ['lb', 'kg', 0.453_592_37],
  ['oz', 'kg', 0.028_349_523_125],
  ['lbf', 'N', 4.448_221_615_260_5],
  ['lbf·ft', 'N·m', 1.355_817_948_331_4],
  ['lbf·in', 'N·m', 0.112_984_829_027_616_7],
  ['psi', 'Pa', 6894.757_293_168_361],
  ['hp', 'W', 745.699_871_582_27],
  ['PS', 'W', 735.498_75],
  ['lb/in^3', 'kg/m^3', 27_679.904_710_203],
  ['lb/ft^3', 'kg/m^3', 16.018_463_373_96],
  ['in^3', 'm^3', 1.638_706_4e-5],
  ['rpm', 'rad/s', Math.PI / 30],
  ['deg', 'rad', Math.PI / 180],
];

/** Half a unit in the last of seven digits, and a hair for a five that was rounded to even. */
const SEVEN_DIGITS = 0.5e-6 * 1.001;

function ratio(unit: string, other: string): number {
  const [a, b] = [parseUnit(unit)!, parseUnit(other)!];
  expect(nameDimension(a.dimension)).toBe(nameDimension(b.dimension));
  return a.factor / b.factor;
}

describe('NIST SP 811, appendix B.8 (published, second-hand)', () => {
  test.each(SP_811)('one %s is so many %s: %d', (unit, si, factor) => {
    const scale = 10 ** Math.floor(Math.log10(factor));
    expect(Math.abs(ratio(unit, si) - factor) / scale).toBeLessThanOrEqual(SEVEN_DIGITS);
  });
});

describe('exact factors (derived from the exact inch, pound and g)', () => {
  test.each(EXACT)('one %s is so many %s: %d', (unit, si, factor) => {
    expect(Math.abs(ratio(unit, si) / factor - 1)).toBeLessThan(1e-12);
  });
});

describe('power from torque and speed (derived)', () => {
  const power = (torque: string, speed: string) => {
    const [t, n] = [parseUnit(torque)!, parseUnit(speed)!];
    expect(nameDimension(multiplyDimensions(t.dimension, n.dimension))).toBe('power');
    return t.factor * n.factor;
  };

  test('300 lbf·ft at 2500 rpm is 142.800 hp, 106.486 kW', () => {
    const watts = 300 * 2500 * power('lbf·ft', 'rpm');
    expect(watts / parseUnit('hp')!.factor).toBeCloseTo(142.8, 3);
    expect(watts / parseUnit('kW')!.factor).toBeCloseTo(106.486, 3);
  });

  test('hp = lbf·ft × rpm / 5252.1131 and kW = N·m × rpm / 9549.2966', () => {
    expect(parseUnit('hp')!.factor / power('lbf·ft', 'rpm')).toBeCloseTo(5252.1131, 4);
    expect(parseUnit('kW')!.factor / power('N·m', 'rpm')).toBeCloseTo(9549.2966, 4);
  });
});

test('the traps are not in the table: survey mile, electric horsepower', () => {
  expect(ratio('mi', 'm')).not.toBeCloseTo(1609.347, 3);
  expect(ratio('hp', 'W')).not.toBeCloseTo(746, 1);
});
