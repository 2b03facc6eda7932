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
      expect(scanFractionBehind(text, 0, 1, mode)).toMatchObject({ value, to });
    }
  });

  test('a tight hyphen joins in an entry and subtracts in a sheet', () => {
    expect(scanFractionBehind('3-1/8', 0, 1, 'entry')).toMatchObject({ value: 0.125, to: 5 });
    expect(scanFractionBehind('3-1/8', 0, 1, 'sheet')).toBeUndefined();
  });

  test.each(['3 - 1/8', '3 -1/8', '3-9/8', '3-x', '3 x', '3', '3/8', '3 1/x'])(
    '%s holds none',
    (text) => {
      expect(scanFractionBehind(text, 0, 1, 'entry')).toBeUndefined();
    },
  );

  test.each([
    ['3 9/8', '9/8 behind a whole number must be less than 1, as in 3 1/8'],
    ['3 8/8', '8/8 behind a whole number must be less than 1, as in 3 1/8'],
    ['3 1/0', '1/0 divides by zero'],
    ['3-1/0', '1/0 divides by zero'],
  ])('%s is refused', (text, message) => {
    expect(scanFractionBehind(text, 0, 1, 'entry')).toMatchObject({
      failure: 'malformed-number',
      message,
    });
  });

  test('none belongs to a number that a slash is glued to', () => {
    expect(scanFractionBehind('3/8-1/16', 2, 3, 'entry')).toBeUndefined();
    expect(scanFractionBehind('1/2 1/8', 2, 3, 'entry')).toBeUndefined();
    expect(scanFractionBehind('10 / 2-1/2', 5, 6, 'entry')).toMatchObject({ value: 0.5 });
  });

  test.each(['5+3-1/8', '5 +3-1/8', '5*3-1/8', '5"-3-1/8', '⅛+3-1/8', '(5)−3-1/8'])(
    'a hyphen behind a tight sign is asked about: %s',
    (text) => {
      const start = text.indexOf('3-');
      expect(scanFractionBehind(text, start, start + 1, 'entry')).toMatchObject({
        failure: 'ambiguous-number',
        message:
          '3-1/8 can be read as 3 1/8 or as 3 less 1/8: put a blank before the fraction, or blanks around the minus',
        from: start,
        to: text.length,
      });
    },
  );

  test.each(['-3-1/8', '5 + 3-1/8', '2*(3-1/8', '[3-1/8', "5'-3-1/8", '5′-3-1/8', '2 * -3-1/8'])(
    'but one behind a blank, a bracket, a foot mark or a sign of its own joins: %s',
    (text) => {
      const start = text.indexOf('3-');
      expect(scanFractionBehind(text, start, start + 1, 'entry')).toMatchObject({ value: 0.125 });
    },
  );
});
