import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatNumber, stripZeros } from '../../src/units/format-number.ts';

describe('to a step', () => {
  test.each([
    [3.2124, 0.001, '3.212'],
    [3.2, 0.001, '3.200'],
    [1.005, 0.01, '1.01'],
    [-1.005, 0.01, '−1.01'],
    [2.5, 1, '3'],
    [-2.5, 1, '−3'],
    [0.12, 0.05, '0.10'],
    [0.125, 0.05, '0.15'],
    [1234, 10, '1230'],
    [12_345.6, 0.1, '12\u202F345.6'],
    [1_234_567, 1, '1\u202F234\u202F567'],
    [1e-7, 1e-7, '0.0000001'],
    [0, 0.001, '0.000'],
    [-0, 0.001, '0.000'],
    [999.9996, 0.001, '1000.000'],
    [1e16, 0.001, '1e16'],
  ])('%d to %d is %s', (value, resolution, text) => {
    expect(formatNumber(value, { resolution })).toBe(text);
  });

  test.each([
    [0.0003, 0.001, '0.0003'],
    [-0.00034567, 0.001, '−0.00035'],
    [0.4, 1, '0.4'],
    [1e-9, 0.001, '1e−9'],
  ])('%d is not lost in steps of %d', (value, resolution, text) => {
    expect(formatNumber(value, { resolution })).toBe(text);
  });

  test('what binary arithmetic leaves of a difference is nothing', () => {
    expect(formatNumber(0.1 + 0.2 - 0.3, { resolution: 0.001 })).toBe('0.000');
  });

  test.each([0, -1, Number.NaN])('a step of %d is no step', (resolution) => {
    expect(formatNumber(2.5, { resolution })).toBe('2.5');
  });
});

describe('to significant figures', () => {
  test.each([
    [2.5, '2.5'],
    [1.23456, '1.235'],
    [9.99996, '10'],
    [1234.5, '1235'],
    [123_456, '123\u202F456'],
    [123_456.7, '123\u202F457'],
    [1e9, '1\u202F000\u202F000\u202F000'],
    [0.000123456, '0.0001235'],
    [1.23456e-9, '1.235e−9'],
    [1e20, '1e20'],
    [-3, '−3'],
    [0, '0'],
    [0.1 + 0.2, '0.3'],
  ])('%d without a wish is %s', (value, text) => {
    expect(formatNumber(value)).toBe(text);
  });

  test.each([
    [2.5, 4, '2.500'],
    [12, 4, '12.00'],
    [12_345, 2, '12\u202F345'],
    [1.005, 3, '1.01'],
    [0, 3, '0'],
    [5, 1, '5'],
  ])('%d with %i figures is %s', (value, figures, text) => {
    expect(formatNumber(value, { figures })).toBe(text);
  });
});

describe('as a fraction', () => {
  test.each([
    [3.125, 64, '3\u00A01/8'],
    [3.13, 64, '≈ 3\u00A01/8'],
    [-3.125, 64, '−3\u00A01/8'],
    [-3.13, 64, '≈ −3\u00A01/8'],
    [0.5, 64, '1/2'],
    [-0.125, 8, '−1/8'],
    [4, 64, '4'],
    [0.9999, 8, '≈ 1'],
    [0, 8, '0'],
    [-0, 8, '0'],
    [0.001, 64, '0.001'],
    [-0.001, 64, '−0.001'],
    [12_000.25, 4, '12\u202F000\u00A01/4'],
    [1 / 3, 64, '≈ 21/64'],
    [3.124999999999999, 64, '3\u00A01/8'],
  ])('%d in parts of %i is %s', (value, fraction, text) => {
    expect(formatNumber(value, { fraction })).toBe(text);
  });

  test('a number beyond all fractions is shown as a number', () => {
    expect(formatNumber(1e15, { fraction: 64 })).toBe('1e15');
  });
});

test.each([
  [Number.NaN, 'no number'],
  [Number.POSITIVE_INFINITY, '∞'],
  [Number.NEGATIVE_INFINITY, '−∞'],
])('%d is shown as %s', (value, text) => {
  expect(formatNumber(value, { resolution: 0.1 })).toBe(text);
});

test('what is not zero has a digit that is not zero', () => {
  const digits = fc.oneof(
    fc.constantFrom(1, 0.5, 0.05, 0.001).map((resolution) => ({ resolution })),
    fc.constantFrom(2, 8, 64).map((fraction) => ({ fraction })),
    fc.integer({ min: 1, max: 6 }).map((figures) => ({ figures })),
    fc.constant({}),
  );
  const value = fc.double({ min: 1e-9, max: 1e12, noNaN: true });
  fc.assert(
    fc.property(value, fc.boolean(), digits, (size, negative, wish) => {
      const text = formatNumber(negative ? -size : size, wish);
      expect(text).toMatch(/[1-9]/);
      expect(text.includes('−') && !/e−/.test(text)).toBe(negative && !/e−/.test(text));
    }),
  );
});

test.each([
  ['2.500', '2.5'],
  ['2.000', '2'],
  ['200', '200'],
  ['1.50e−9', '1.5e−9'],
  ['1.000e20', '1e20'],
])('%s without its idle zeros is %s', (text, stripped) => {
  expect(stripZeros(text)).toBe(stripped);
});
