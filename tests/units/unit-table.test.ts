import { describe, expect, test } from 'vitest';
import { equalDimensions } from '../../src/units/dimension.ts';
import { findUnit } from '../../src/units/unit-index.ts';
import { UNITS } from '../../src/units/unit-table.ts';

/** All that the sheets of the trade and the entry fields are promised. */
const PROMISED =
  'in thou ft yd mi mm cm m km rev deg rad s min h mph km/h rpm lb oz kg g lbf N kN kgf lbf·ft lbf·in N·m kgf·m psi bar kPa MPa GPa hp PS kW cc in^3 mL L %';

describe('the unit table', () => {
  test('has every promised unit', () => {
    const symbols = UNITS.map((unit) => unit.symbol);
    expect(symbols).toEqual(expect.arrayContaining(PROMISED.split(' ')));
  });

  test('gives no spelling to two units', () => {
    const spellings = UNITS.flatMap((unit) => [unit.symbol, ...unit.aliases, ...unit.marks]);
    expect(spellings.length).toBe(new Set(spellings).size);
  });

  test.each(UNITS.map((unit) => [unit.symbol, unit] as const))(
    'declares %s with a factor, a name and a source',
    (_, unit) => {
      expect(unit.factor).toBeGreaterThan(0);
      expect(unit.name).not.toBe('');
      expect(unit.source).not.toBe('');
    },
  );

  test.each(UNITS.filter((unit) => unit.system !== 'common').map((unit) => [unit.symbol, unit]))(
    'names a counterpart of %s in the other system and of the same dimension',
    (_, unit) => {
      const counterpart = findUnit((unit as (typeof UNITS)[number]).counterpart!)!;
      const own = unit as (typeof UNITS)[number];
      expect(counterpart.system).not.toBe(own.system);
      expect(counterpart.system).not.toBe('common');
      expect(equalDimensions(counterpart.dimension, own.dimension)).toBe(true);
    },
  );

  test('names no counterpart for what both systems use', () => {
    const common = UNITS.filter((unit) => unit.system === 'common');
    expect(common.map((unit) => unit.symbol)).toEqual(
      expect.arrayContaining(['rev', 'deg', 's', 'min', 'rpm', '%']),
    );
    expect(common.filter((unit) => unit.counterpart !== undefined)).toEqual([]);
  });
});
