import { describe, expect, test } from 'vitest';
import { multiplyDimensions, nameDimension } from '../../src/units/dimension.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';
import { readPublished, type Sourced } from '../support/published.ts';

interface FactorCheck extends Sourced {
  readonly unit: string;
  readonly si: string;
  readonly factor: number;
}

const { checks } = readPublished<{ checks: readonly FactorCheck[] }>('units.json');
const EXACT = checks.filter(({ kind }) => kind === 'derived');
const SEVEN_FIGURES = checks.filter(({ kind }) => kind !== 'derived');

/** Half a unit in the last of seven digits, and a hair for a five that was rounded to even. */
const SEVEN_DIGITS = 0.5e-6 * 1.001;

function ratio(unit: string, other: string): number {
  const [a, b] = [parseUnit(unit)!, parseUnit(other)!];
  expect(nameDimension(a.dimension)).toBe(nameDimension(b.dimension));
  return a.factor / b.factor;
}

describe('as printed in seven digits', () => {
  test.each(SEVEN_FIGURES)('$what ($kind)', ({ unit, si, factor }) => {
    const scale = 10 ** Math.floor(Math.log10(factor));
    expect(Math.abs(ratio(unit, si) - factor) / scale).toBeLessThanOrEqual(SEVEN_DIGITS);
  });
});

describe('exact factors', () => {
  test.each(EXACT)('$what ($kind)', ({ unit, si, factor }) => {
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
