import { describe, expect, test } from 'vitest';
import { scanFraction, scanFractionBehind } from '../../src/units/scan-fraction.ts';

describe('a fraction by itself', () => {
  test.each([
    ['1/8', 0.125, '1/8'],
    ['9/8 in', 1.125, '9/8'],
    ['1⁄8', 0.125, '1/8'],
    ['⅞"', 0.875, '7/8'],
    ['0/8', 0, '0/8'],
  ])('%s is %d', (text, value, digits) => {
    expect(scanFraction(text, 0)).toMatchObject({ value, digits });
  });

  test.each(['1/8.5', '1/8,5', '1 / 8', '1/x', '1/', '/8', 'x', '', '1.5/8'])(
    '%j is none',
    (text) => {
      expect(scanFraction(text, 0)).toBeUndefined();
    },
  );

  test.each([
    ['1/0', '1/0 divides by zero'],
    ['⅛5', '⅛5 is no number: a fraction stands last, as in 3 1/8'],
    ['⅛⅛', '⅛⅛ is no number: a fraction stands last, as in 3 1/8'],
    [`${'9'.repeat(400)}/2`, `${'9'.repeat(39)}… has too many digits`],
  ])('%s is refused', (text, message) => {
    expect(scanFraction(text, 0)).toMatchObject({ failure: 'malformed-number', message });
  });
});

describe('a fraction behind a whole number', () => {
  test.each([
    ['3 1/8', 0.125, 5],
    ['3  1/8', 0.125, 6],
    ['3⅛', 0.125, 2],
    ['3 ⅛', 0.125, 3],
    ['3\u00A01/8', 0.125, 5],
  ])('%s holds one in both modes', (text, value, to) => {
    for (const mode of ['sheet', 'entry'] as const) {
      expect(scanFractionBehind(text, 1, mode)).toMatchObject({ value, to });
    }
  });

  test('a tight hyphen joins in an entry and subtracts in a sheet', () => {
    expect(scanFractionBehind('3-1/8', 1, 'entry')).toMatchObject({ value: 0.125, to: 5 });
    expect(scanFractionBehind('3-1/8', 1, 'sheet')).toBeUndefined();
  });

  test.each(['3 - 1/8', '3 -1/8', '3-9/8', '3-x', '3 x', '3', '3/8', '3 1/x'])(
    '%s holds none',
    (text) => {
      expect(scanFractionBehind(text, 1, 'entry')).toBeUndefined();
    },
  );

  test.each([
    ['3 9/8', '9/8 behind a whole number must be less than 1, as in 3 1/8'],
    ['3 8/8', '8/8 behind a whole number must be less than 1, as in 3 1/8'],
    ['3 1/0', '1/0 divides by zero'],
    ['3-1/0', '1/0 divides by zero'],
  ])('%s is refused', (text, message) => {
    expect(scanFractionBehind(text, 1, 'entry')).toMatchObject({
      failure: 'malformed-number',
      message,
    });
  });
});
