import { expect, test } from 'vitest';
import { formatUnit } from '../../src/units/format-unit.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

test.each([
  ['in', 'in'],
  ['deg', '°'],
  ['deg/s', 'deg/s'],
  ['kg/m^3', 'kg/m³'],
  ['in^3', 'in³'],
  ['1/s^2', '1/s²'],
  ['N*m', 'N·m'],
])('%s is shown as %s, which is read as the same unit', (symbol, shown) => {
  const unit = parseUnit(symbol)!;
  expect(formatUnit(unit)).toBe(shown);
  expect(parseUnit(shown)).toEqual(unit);
});
