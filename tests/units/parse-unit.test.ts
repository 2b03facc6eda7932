import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nameDimension } from '../../src/units/dimension.ts';
import { parseUnit, parseUnitParts, scanUnit } from '../../src/units/parse-unit.ts';
import { UNITS } from '../../src/units/unit-table.ts';

describe('a whole text is read as a unit', () => {
  test.each([
    ['in', 'in', 'length'],
    ['inches', 'in', 'length'],
    ['in/rev', 'in/rev', 'length per turn'],
    ['kg/m^3', 'kg/m^3', 'density'],
    ['kg/m³', 'kg/m^3', 'density'],
    ['rad/s^2', 'rad/s^2', 'turning acceleration'],
    ['1/mi', '1/mi', 'number per length'],
    ['mi^-1', '1/mi', 'number per length'],
    ['mi⁻¹', '1/mi', 'number per length'],
    ['rev/mi', 'rev/mi', 'turn per length'],
    ['N/mm²', 'N/mm^2', 'pressure'],
    ['m/s2', 'm/s^2', 'acceleration'],
    ['kg·m²', 'kg·m^2', 'length^2·mass'],
    ['km/h/s', 'km/h/s', 'acceleration'],
    ['in3', 'in^3', 'volume'],
    ['in³', 'in^3', 'volume'],
    ['cm³', 'cc', 'volume'],
    ['l', 'L', 'volume'],
    ['°', 'deg', 'angle'],
    ['°/s', 'deg/s', 'turning speed'],
    ['%', '%', 'plain number'],
    ['rev/min', 'rpm', 'turning speed'],
    ['mi/h', 'mph', 'speed'],
  ])('%s is %s, a %s', (text, symbol, dimension) => {
    const unit = parseUnit(text);
    expect(unit?.symbol).toBe(symbol);
    expect(nameDimension(unit!.dimension)).toBe(dimension);
  });

  test.each(['N·m', 'N*m', 'N⋅m', 'Nm', 'N-m', 'm·N'])(
    '%s is the newton metre of torque',
    (text) => {
      expect(parseUnit(text)?.symbol).toBe('N·m');
    },
  );

  test.each([
    'lbf·ft',
    'lbf*ft',
    'lb-ft',
    'ft-lb',
    'ft-lbs',
    'lbf-ft',
    'ft·lbf',
    'lb·ft',
    'lb.ft',
    'ft‑lb',
    'lbft',
  ])('%s is the pound-force foot', (text) => {
    expect(parseUnit(text)?.symbol).toBe('lbf·ft');
  });

  test('a torque over an angle or a time keeps its torque', () => {
    expect(nameDimension(parseUnit('N*m*rad/s')!.dimension)).toBe('power');
    expect(parseUnit('lbf·ft/rad')?.symbol).toBe('lbf·ft/rad');
  });

  test.each([
    '',
    ' in',
    'in ',
    'mmm',
    'furlong',
    'in/',
    '/in',
    'in//s',
    'in^',
    'in^0',
    'in^x',
    '1/',
    '1',
    '3 in',
    '"',
    '°C',
    'in·',
    'm^123',
  ])('%j is no unit', (text) => {
    expect(parseUnit(text)).toBeUndefined();
  });
});

describe('a unit is found in a text', () => {
  test.each([
    ['in/x', 'sheet', 'in', 2],
    ['in * 2', 'sheet', 'in', 2],
    ['in*2', 'sheet', 'in', 2],
    ['in*min(a, b)', 'sheet', 'in', 2],
    ['in/g.x', 'sheet', 'in', 2],
    ['in - 2 mm', 'sheet', 'in', 2],
    ['lb-x', 'sheet', 'lb', 2],
    ['in^2.5', 'sheet', 'in', 2],
    ['in^2*3', 'sheet', 'in^2', 4],
    ['in"', 'sheet', 'in', 2],
    ['" x', 'entry', 'in', 1],
    ["''", 'entry', 'in', 2],
    ["'7", 'entry', 'ft', 1],
    ['"/rev', 'entry', 'in/rev', 5],
  ] as const)('%j in a %s gives %s up to %i', (text, mode, symbol, to) => {
    const scan = scanUnit(text, 0, mode);
    expect([scan?.unit.symbol, scan?.to]).toEqual([symbol, to]);
  });

  test.each([
    ['"', 'sheet'],
    ["'", 'sheet'],
    ['and', 'entry'],
    ["'x", 'entry'],
    ['in_x', 'sheet'],
    ['x', 'sheet'],
  ] as const)('%j in a %s starts with no unit', (text, mode) => {
    expect(scanUnit(text, 0, mode)).toBeUndefined();
  });

  test('100,000 characters of units are read through', () => {
    const text = `m${'·m/m'.repeat(25_000)}`;
    expect(scanUnit(text, 0, 'sheet')?.to).toBe(text.length);
  });
});

test('the symbol of any compound reads back as itself', () => {
  const part = fc.tuple(fc.constantFrom(...UNITS), fc.constantFrom('', '^2', '^3', '²', '^-1'));
  const compound = fc.array(fc.tuple(fc.constantFrom('·', '*', '/'), part), {
    minLength: 1,
    maxLength: 4,
  });
  fc.assert(
    fc.property(compound, (list) => {
      const text = list
        .map(([join, [unit, power]]) => join + unit.symbol + power)
        .join('')
        .slice(1);
      const unit = parseUnit(text);
      // `in^3²` is nothing: a unit that has its power already takes no other.
      if (unit === undefined) {
        expect(text).toMatch(/\^3(\^|²)/);
        return;
      }
      const again = parseUnit(unit.symbol);
      expect(again?.symbol).toBe(unit.symbol);
      expect(again?.dimension).toEqual(unit.dimension);
      expect(again!.factor / unit.factor).toBeCloseTo(1, 12);
    }),
  );
});

test('parts come with torques drawn together', () => {
  expect(parseUnitParts('lbf·in/rad').map((part) => [part.unit.symbol, part.exponent])).toEqual([
    ['lbf·in', 1],
    ['rad', -1],
  ]);
  expect(parseUnitParts('x')).toEqual([]);
});
