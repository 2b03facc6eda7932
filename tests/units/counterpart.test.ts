import { expect, test } from 'vitest';
import { unitIn } from '../../src/units/counterpart.ts';
import { equalDimensions } from '../../src/units/dimension.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';
import { UNITS } from '../../src/units/unit-table.ts';

test.each([
  ['in', 'mm'],
  ['thou', 'mm'],
  ['ft', 'm'],
  ['mi', 'km'],
  ['mph', 'km/h'],
  ['lb', 'kg'],
  ['oz', 'g'],
  ['lbf', 'N'],
  ['lbf·ft', 'N·m'],
  ['lbf·in', 'N·m'],
  ['psi', 'bar'],
  ['hp', 'kW'],
  ['in^3', 'cc'],
  ['in/rev', 'mm/rev'],
  ['1/mi', '1/km'],
  ['rev/mi', 'rev/km'],
  ['lbf/in', 'N/mm'],
  ['lb/ft^3', 'kg/m^3'],
  ['lbf·in/rad', 'N·m/rad'],
])('%s is shown in metric as %s', (symbol, metric) => {
  expect(unitIn(parseUnit(symbol)!, 'metric').symbol).toBe(metric);
});

test.each([
  ['mm', 'in'],
  ['km/h', 'mph'],
  ['kPa', 'psi'],
  ['kgf·m', 'lbf·ft'],
  ['PS', 'hp'],
  ['kg·m^2', 'lb·ft^2'],
  ['N·mm', 'lbf·ft'],
])('%s is shown in inch-pound as %s', (symbol, inchPound) => {
  expect(unitIn(parseUnit(symbol)!, 'inch-pound').symbol).toBe(inchPound);
});

test.each(['rev', 'deg', 's', 'rpm', '%', 'rad/s^2'])('%s serves both systems', (symbol) => {
  const unit = parseUnit(symbol)!;
  expect(unitIn(unit, 'metric')).toBe(unit);
  expect(unitIn(unit, 'inch-pound')).toBe(unit);
});

test('a unit of the wanted system stays, whatever its size', () => {
  for (const unit of UNITS) {
    if (unit.system !== 'common') expect(unitIn(unit, unit.system)).toBe(unit);
  }
});

test('a compound of both systems is brought to one', () => {
  expect(unitIn(parseUnit('in/km')!, 'metric').symbol).toBe('mm/km');
  expect(unitIn(parseUnit('in/km')!, 'inch-pound').symbol).toBe('in/mi');
});

test('an unbalance in kg·m stays, since lb·ft would be a torque', () => {
  expect(unitIn(parseUnit('kg·m')!, 'inch-pound').symbol).toBe('kg·m');
});

test('no change of system changes the dimension', () => {
  for (const a of UNITS) {
    for (const b of UNITS) {
      const unit = parseUnit(`${a.symbol}/${b.symbol}`)!;
      for (const system of ['metric', 'inch-pound'] as const) {
        const moved = unitIn(unit, system);
        expect(equalDimensions(moved.dimension, unit.dimension), unit.symbol).toBe(true);
      }
    }
  }
});
