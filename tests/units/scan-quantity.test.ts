import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nameDimension } from '../../src/units/dimension.ts';
import { type QuantityScan, scanQuantity } from '../../src/units/scan-quantity.ts';
import { UNITS } from '../../src/units/unit-table.ts';

const INCH = 0.0254;

function expectQuantity(text: string, mode: 'sheet' | 'entry'): QuantityScan {
  const scan = scanQuantity(text, 0, mode);
  expect(scan, text).not.toHaveProperty('failure');
  expect(scan, text).toBeDefined();
  return scan as QuantityScan;
}

test('a quantity comes in SI with its dimension, unit, digits and place', () => {
  const scan = scanQuantity('gap 3 1/8 in;', 4, 'sheet') as QuantityScan;
  expect(scan).toMatchObject({ digits: '3 1/8', from: 4, to: 12 });
  expect(scan.value).toBeCloseTo(3.125 * INCH, 15);
  expect(scan.unit?.symbol).toBe('in');
  expect(nameDimension(scan.dimension)).toBe('length');
});

describe('marks and feet are read in an entry', () => {
  test.each([
    ['3-1/8"', 3.125, '3 1/8'],
    ['3-1/8 in', 3.125, '3 1/8'],
    ['3⅛″', 3.125, '3 1/8'],
    ['3 1/8”', 3.125, '3 1/8'],
    ['.25"', 0.25, '.25'],
    ['3,5"', 3.5, '3.5'],
    [`5' 7 1/4"`, 67.25, '67.25'],
    [`5'7"`, 67, '67'],
    [`5'-7"`, 67, '67'],
    ['5’ 7”', 67, '67'],
    [`5' 7''`, 67, '67'],
    ['5 ft 7 in', 67, '67'],
    ['5ft 7 1/2in', 67.5, '67.5'],
    ['5 feet 7 inches', 67, '67'],
    [`0' 3/8"`, 0.375, '0.375'],
  ])('%s is %d inches', (text, inches, digits) => {
    const scan = expectQuantity(text, 'entry');
    expect(scan.value).toBeCloseTo(inches * INCH, 12);
    expect(scan).toMatchObject({ digits, to: text.length });
  });

  test.each([
    [`5'`, 5, 2],
    ['5 ft', 5, 4],
    ['5 ft - 7 in', 5, 4],
    ['5 ft-7 in', 5, 4],
    [`5'-x`, 5, 2],
    [`5'-7`, 5, 2],
    ['5 ft + 7 in', 5, 4],
  ])('%s begins with %d feet alone', (text, feet, to) => {
    const scan = expectQuantity(text, 'entry');
    expect(scan.value).toBeCloseTo(feet * 12 * INCH, 12);
    expect(scan.to).toBe(to);
  });

  test.each([
    [`5' 7`, 'malformed-number', `5' 7 lacks an inch mark: write 5' 7" or 5 ft 7 in`],
    ['5 ft 7 mm', 'malformed-number', `5 ft 7 mm lacks an inch mark: write 5' 7" or 5 ft 7 in`],
    [
      `5' 1,234"`,
      'ambiguous-number',
      '1,234 can be read as 1234 or as 1.234: write the one that is meant',
    ],
  ])('%s is refused', (text, failure, message) => {
    expect(scanQuantity(text, 0, 'entry')).toMatchObject({ failure, message });
  });

  test('a sheet needs the mark for its texts, and does not join feet and inches', () => {
    expect(expectQuantity('3 "Label"', 'sheet')).toMatchObject({ unit: undefined, to: 1 });
    expect(expectQuantity('5 ft 7 in', 'sheet').to).toBe(4);
  });
});

test.each(['', 'x', '-3', '±3', ' 3', '"', '[3'])('no quantity starts at %j', (text) => {
  expect(scanQuantity(text, 0, 'entry')).toBeUndefined();
});

test.each([
  ['1e308 GPa', '1e308 GPa is too large to work with'],
  ['1e-323 thou', '1e-323 thou is too small to work with'],
])('%s is refused', (text, message) => {
  expect(scanQuantity(text, 0, 'sheet')).toMatchObject({ failure: 'malformed-number', message });
});

test.each([
  ['ones and blanks', '1 '.repeat(50_000)],
  ['feet', `5' `.repeat(33_333)],
  ['fractions', '1/1 '.repeat(25_000)],
  ['blanks', `1${' '.repeat(99_999)}`],
  ['slashes', '1/'.repeat(50_000)],
])('100,000 characters of %s are read through, number by number', (_, text) => {
  let at = 0;
  let found = 0;
  while (at < text.length) {
    const scan = scanQuantity(text, at, 'entry');
    found += scan === undefined ? 0 : 1;
    at = scan === undefined ? at + 1 : scan.to;
  }
  expect(found).toBeGreaterThan(0);
});

test('digits, a blank and the unit read back as the same quantity in a sheet', () => {
  const digits = fc.oneof(
    fc.double({ min: 0.001, max: 1e6, noNaN: true }).map((x) => String(Number(x.toPrecision(6)))),
    fc.tuple(fc.nat(99), fc.integer({ min: 1, max: 63 })).map(([a, b]) => `${a} ${b}/64`),
    fc.tuple(fc.nat(99), fc.integer({ min: 1, max: 63 })).map(([a, b]) => `${a}-${b}/64`),
    fc.tuple(fc.nat(9999), fc.nat(9)).map(([a, b]) => `${a},${b}`),
  );
  const units = fc.constantFrom(
    ...UNITS.map((unit) => unit.symbol),
    'in/rev',
    'kg/m^3',
    '1/mi',
    '"',
  );
  fc.assert(
    fc.property(digits, units, (number, unit) => {
      const typed = expectQuantity(`${number} ${unit}`, 'entry');
      const written = expectQuantity(`${typed.digits} ${typed.unit!.symbol}`, 'sheet');
      expect(written.value).toBe(typed.value);
      expect(written.dimension).toEqual(typed.dimension);
    }),
  );
});
