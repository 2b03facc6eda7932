import { describe, expect, test } from 'vitest';
import { scanNumber } from '../../src/units/scan-number.ts';

const read = (text: string, mode: 'sheet' | 'entry') => scanNumber(text, 0, mode);

describe('in both modes', () => {
  test.each([
    ['3', 3, 1],
    ['3.2', 3.2, 3],
    ['.025', 0.025, 4],
    ['3.', 3, 2],
    ['1e9', 1e9, 3],
    ['1.5E-3', 1.5e-3, 6],
    ['1e−3', 1e-3, 4],
    ['2e+2 x', 200, 4],
    ['5\u202F280', 5280, 5],
    ['1\u2009234\u2009567.5', 1_234_567.5, 11],
    ['5\u00A0280 ft', 5280, 5],
    ['5 280', 5, 1],
    ['3\u00A01/8', 3, 1],
    ['1\u202F2345', 1, 1],
    ['3, 4', 3, 1],
    ['3e', 3, 1],
    ['3e5x', 3, 1],
    ['007', 7, 3],
  ])('%j is %d up to %i', (text, value, to) => {
    for (const mode of ['sheet', 'entry'] as const)
      expect(read(text, mode)).toMatchObject({ value, to });
  });

  test.each(['', 'x', '.', '.x', '-3', '+3', ',5', '٣'])('no number starts at %j', (text) => {
    for (const mode of ['sheet', 'entry'] as const) expect(read(text, mode)).toBeUndefined();
  });

  test.each([
    ['1.2.3', '1.2.3 has more than one decimal point'],
    ['3..2', '3..2 has more than one decimal point'],
    ['1e999', '1e999 is too large a number'],
    ['1e-999', '1e-999 is too small a number'],
  ])('%s is refused', (text, message) => {
    expect(read(text, 'sheet')).toMatchObject({ failure: 'malformed-number', message, from: 0 });
  });

  test('nought stays nought however it is written', () => {
    expect(read('0e-999', 'sheet')).toMatchObject({ value: 0 });
  });
});

describe('a sheet knows the point only', () => {
  test.each([
    ['12,5', 12, 2],
    ['1,234', 1, 1],
    ['1.5,2', 1.5, 3],
  ])('in %s the number ends at the comma', (text, value, to) => {
    expect(read(text, 'sheet')).toMatchObject({ value, to });
  });
});

describe('an entry may have commas', () => {
  test.each([
    ['12,5', 12.5, '12.5'],
    ['12,54', 12.54, '12.54'],
    ['1,2345', 1.2345, '1.2345'],
    ['1234,567', 1234.567, '1234.567'],
    ['0,125', 0.125, '0.125'],
    ['1,5e3', 1500, '1.5e3'],
    ['1,234.5', 1234.5, '1234.5'],
    ['1,234,567', 1_234_567, '1234567'],
    ['1,234,567.25', 1_234_567.25, '1234567.25'],
  ])('%s is %d', (text, value, digits) => {
    expect(read(text, 'entry')).toMatchObject({ value, digits, to: text.length });
  });

  test('1,234 asks which of two numbers is meant', () => {
    expect(read('1,234', 'entry')).toEqual({
      failure: 'ambiguous-number',
      message: '1,234 can be read as 1234 or as 1.234: write the one that is meant',
      from: 0,
      to: 5,
    });
  });

  test.each(['1.234,5', '1.234.567,8', '3,1.5', '12,5,3', '1,234,56', '1,234.5.6', '12,5.'])(
    '%s asks, since either sign could be the decimal one',
    (text) => {
      expect(read(text, 'entry')).toMatchObject({
        failure: 'ambiguous-number',
        from: 0,
        to: text.length,
      });
    },
  );

  test.each([
    ['2.95,1.95', 2.95],
    ['0.010,0.015', 0.01],
    ['3, 4', 3],
    ['3,', 3],
    ['3,x', 3],
  ])('in %s the comma separates and %d comes first', (text, value) => {
    expect(read(text, 'entry')).toMatchObject({ value });
  });

  test('more groups than any number has are refused, not cut', () => {
    expect(read(`1${',234'.repeat(40)}`, 'entry')).toMatchObject({ failure: 'ambiguous-number' });
  });
});

test.each([
  ['digits', '1'.repeat(100_000), 'malformed-number'],
  ['points', `1${'.1'.repeat(50_000)}`, 'malformed-number'],
  ['groups', `1${',111'.repeat(25_000)}`, 'ambiguous-number'],
])('100,000 %s are refused with a short sentence', (_, text, failure) => {
  const found = read(text, 'entry');
  expect(found).toMatchObject({ failure });
  expect((found as { message: string }).message.length).toBeLessThan(220);
});

test('a long list is read number by number', () => {
  const text = '1.5,'.repeat(25_000);
  let count = 0;
  for (let at = 0; at < text.length; at += 4) if (scanNumber(text, at, 'entry')) count += 1;
  expect(count).toBe(25_000);
});
