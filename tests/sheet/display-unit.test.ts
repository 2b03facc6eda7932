import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inferDisplayUnit } from '../../src/sheet/display-unit.ts';
import type { Dimension } from '../../src/units/dimension.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';
import { UNITS } from '../../src/units/unit-table.ts';

const unit = (symbol: string) => parseUnit(symbol)!;
const symbolFor = (like: string, ...met: readonly string[]) =>
  inferDisplayUnit(unit(like).dimension, met.map(unit))?.symbol;

test.each([
  ['in', 'mm'],
  ['lb', 'kg'],
  ['h', 's'],
  ['rev', 'deg'],
  ['mph', 'km/h'],
  ['rad/s', 'rpm'],
  ['lbf', 'N'],
  ['lbf·ft', 'N·m'],
  ['hp', 'kW'],
  ['psi', 'kPa'],
  ['in/rev', 'mm/rev'],
])('a result like %s is shown in %s where nothing else is known', (like, usual) => {
  expect(symbolFor(like)).toBe(usual);
});

test('a plain number has no unit, whatever was met on the way', () => {
  expect(inferDisplayUnit([0, 0, 0, 0], [unit('%'), unit('mm')])).toBeUndefined();
});

test('a unit met on the way goes before the usual one, the first that fits', () => {
  expect(symbolFor('mm', 'rpm', 'thou', 'in')).toBe('thou');
  expect(symbolFor('mm', 'rpm')).toBe('mm');
});

test('a dimension that has no usual unit is shown in base units', () => {
  const found = inferDisplayUnit([2, 1, -3, -1], [])!;
  expect(found).toMatchObject({ factor: 1, dimension: [2, 1, -3, -1] });
  expect(found.symbol).toContain('kg');
});

test('any dimension has a unit of that dimension, and every one of the table has', () => {
  const exponent = fc.integer({ min: -3, max: 3 });
  const any = fc.tuple(exponent, exponent, exponent, exponent);
  const expectFits = (dimension: Dimension) => {
    const found = inferDisplayUnit(dimension, []);
    if (dimension.every((x) => x === 0)) expect(found).toBeUndefined();
    else expect(found!.dimension).toEqual(dimension);
  };
  fc.assert(fc.property(any, expectFits));
  for (const { dimension } of UNITS) expectFits(dimension);
});
