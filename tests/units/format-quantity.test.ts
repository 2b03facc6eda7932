import fc from 'fast-check';
import { type Unit as PeerUnit, unit as peer } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { convertResolution } from '../../src/units/convert-resolution.ts';
import { unitIn } from '../../src/units/counterpart.ts';
import { nameDimension } from '../../src/units/dimension.ts';
import { formatAmount, formatQuantity, joinUnit } from '../../src/units/format-quantity.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';
import { type QuantityScan, scanQuantity } from '../../src/units/scan-quantity.ts';
import { UNITS } from '../../src/units/unit-table.ts';

const INCH = parseUnit('in')!;

describe('an SI value is shown in a unit', () => {
  test('with a no-break space between', () => {
    expect(formatQuantity(0.0815848, INCH, { resolution: 0.001 })).toBe('3.212\u00A0in');
    expect(formatQuantity(0.079375, INCH, { fraction: 64 })).toBe('3\u00A01/8\u00A0in');
    expect(formatQuantity(0.55, parseUnit('%'))).toBe('55\u00A0%');
    expect(formatQuantity(7800, parseUnit('kg/m^3'))).toBe('7800\u00A0kg/m³');
  });

  test('without one before a degree sign', () => {
    expect(formatQuantity(Math.PI / 60, parseUnit('deg'), { resolution: 0.5 })).toBe('3.0°');
  });

  test('as a bare number where there is no unit', () => {
    expect(formatQuantity(3.55, undefined)).toBe('3.55');
    expect(joinUnit('3.55', undefined)).toBe('3.55');
  });

  test('and the number can be had alone', () => {
    expect(formatAmount(-0.00127, INCH, { resolution: 0.01 })).toBe('−0.05');
  });
});

/** What the page shows, read as a person would type it. */
function readBack(text: string, mode: 'sheet' | 'entry'): number {
  const negative = text.startsWith('−');
  const scan = scanQuantity(text, negative ? 1 : 0, mode) as QuantityScan;
  expect(scan, text).toMatchObject({ to: text.length });
  return negative ? -scan.value : scan.value;
}

const amounts = fc
  .tuple(
    fc.double({ min: 1, max: 10, maxExcluded: true, noNaN: true }),
    fc.integer({ min: -5, max: 9 }),
  )
  .map(([mantissa, power]) => mantissa * 10 ** power);
const units = fc.constantFrom(
  ...UNITS,
  ...['in/rev', 'mm/rev', 'kg/m^3', '1/mi', 'rad/s^2', 'N/mm', 'lbf/in^2'].map(
    (s) => parseUnit(s)!,
  ),
);
const modes = fc.constantFrom('sheet' as const, 'entry' as const);
const signs = fc.constantFrom(1, -1);

test('what is shown to a step reads back to within half the step', () => {
  const steps = fc.constantFrom(1, 0.5, 0.1, 0.05, 0.01, 0.001, 1 / 64);
  fc.assert(
    fc.property(amounts, signs, units, steps, modes, (size, sign, unit, resolution, mode) => {
      const value = sign * size * unit.factor;
      const back = readBack(formatQuantity(value, unit, { resolution }), mode);
      const slack = (resolution / 2) * 1.000_001 + size * 1e-12;
      expect(Math.abs(back - value) / unit.factor).toBeLessThanOrEqual(slack);
    }),
  );
});

test('what is shown to figures reads back to within half of the last', () => {
  fc.assert(
    fc.property(
      amounts,
      signs,
      units,
      fc.integer({ min: 1, max: 12 }),
      modes,
      (size, sign, unit, figures, mode) => {
        const value = sign * size * unit.factor;
        const back = readBack(formatQuantity(value, unit, { figures }), mode);
        expect(Math.abs(back / value - 1)).toBeLessThanOrEqual(0.5001 * 10 ** (1 - figures));
      },
    ),
  );
});

test('a fraction reads back to within half a part, exactly where it is not marked', () => {
  const parts = fc.constantFrom(2, 4, 8, 16, 32, 64);
  const sizes = fc.double({ min: 0.5, max: 1e4, noNaN: true });
  fc.assert(
    fc.property(sizes, signs, parts, modes, (size, sign, fraction, mode) => {
      for (const amount of [size, Math.ceil(size * fraction) / fraction]) {
        const text = formatQuantity(sign * amount * INCH.factor, INCH, { fraction });
        const off = Math.abs(readBack(text.replace(/^≈ /, ''), mode) / INCH.factor - sign * amount);
        const slack = text.startsWith('≈') ? 0.500_001 / fraction : 1e-9 * amount;
        expect(off).toBeLessThanOrEqual(slack);
      }
    }),
  );
});

test('a quantity shown in the other system and read there is the same within its step', () => {
  const own = fc.constantFrom(...UNITS.filter((unit) => unit.system !== 'common'));
  fc.assert(
    fc.property(amounts, own, modes, (size, unit, mode) => {
      const other = unitIn(unit, unit.system === 'metric' ? 'inch-pound' : 'metric');
      const resolution = convertResolution(0.001, unit, other);
      const back = readBack(formatQuantity(size * unit.factor, other, { resolution }), mode);
      const slack = 0.000_500_001 + size * 1e-12;
      expect(Math.abs(back / unit.factor - size)).toBeLessThanOrEqual(slack);
    }),
  );
});

test('there and back through the other system is exact to the last bits', () => {
  fc.assert(
    fc.property(amounts, units, (size, unit) => {
      for (const system of ['metric', 'inch-pound'] as const) {
        const other = unitIn(unit, system);
        const there = (size * unit.factor) / other.factor;
        expect(Math.abs((there * other.factor) / unit.factor / size - 1)).toBeLessThan(1e-12);
      }
    }),
  );
});

/** Where the peer knows the same unit. It has torque as energy, and its own names. */
// biome-ignore format: a table of pairs
const PEER: Readonly<Record<string, string>> = {
  in: 'in', thou: 'mil', ft: 'ft', yd: 'yd', mi: 'mi', mm: 'mm', cm: 'cm', m: 'm', km: 'km',
  deg: 'deg', rad: 'rad', s: 's', min: 'minute', h: 'hour', mph: 'mi/hour', 'km/h': 'km/hour',
  lb: 'lbm', oz: 'oz', kg: 'kg', g: 'g', lbf: 'lbf', N: 'N', kN: 'kN', kgf: 'kgf', psi: 'psi',
  bar: 'bar', Pa: 'Pa', kPa: 'kPa', MPa: 'MPa', GPa: 'GPa', hp: 'hp', W: 'W', kW: 'kW',
  'in^3': 'in^3', cc: 'cm^3', mL: 'ml', L: 'l', 'N·m': 'N m', 'lbf·ft': 'lbf ft',
  'lbf·in': 'lbf in', 'kgf·m': 'kgf m', 'kg/m^3': 'kg/m^3', 'rad/s^2': 'rad/s^2', 'lbf/in': 'lbf/in',
};

const SI = ['m', 'kg', 's', 'rad'];

test.each(Object.entries(PEER))('mathjs reads 3.2 %s as the same quantity', (symbol, theirs) => {
  const own = scanQuantity(`3.2 ${symbol}`, 0, 'sheet') as QuantityScan;
  const isTorque = nameDimension(own.dimension) === 'torque';
  const powers = SI.map((base, i) => [base, own.dimension[i]!] as const)
    .filter(([base, power]) => power !== 0 && !(isTorque && base === 'rad'))
    .map(([base, power]) => `${base}^${power}`);
  const found = peer(`3.2 ${theirs}`) as PeerUnit;
  expect(own.value / found.toNumber(powers.join(' '))).toBeCloseTo(1, 6);
});
