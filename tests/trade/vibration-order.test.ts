import { describe, expect, test } from 'vitest';
import { LIKELY_SOURCES } from '../../src/trade/vibration-order.ts';
import { refusalOf } from '../support/run-function.ts';

const { work } = LIKELY_SOURCES;
const NAMES = ['tyre', 'shaft', 'joint', 'engine'];
const RATES = Float64Array.from([16, 53, 106, 50]);
const likely = (felt: number, within: number) =>
  work.type === 'whole' ? work.run(NAMES, RATES, felt, within) : undefined;

describe('what a vibration may come from', () => {
  test('is named nearest first', () => {
    expect(likely(52, 0.05)).toEqual(['shaft', 'engine']);
    expect(likely(51, 0.05)).toEqual(['engine', 'shaft']);
  });

  test('is nothing where nothing turns at that rate', () => {
    expect(likely(80, 0.05)).toEqual([]);
  });

  test('counts what lies at the very edge', () => {
    expect(likely(40, 0.25)).toEqual(['engine']);
  });
});

test('lists that do not go together are refused', () => {
  expect(refusalOf(LIKELY_SOURCES, ['tyre'], RATES, 50, 0.05)).toContain(
    '1 names do not go with 4 rates',
  );
});

test('a vibration of nought is refused, and a felt one is not', () => {
  expect(refusalOf(LIKELY_SOURCES, NAMES, RATES, 0, 0.05)).toContain('above 0');
  expect(refusalOf(LIKELY_SOURCES, NAMES, RATES, 50, 0.05)).toBeUndefined();
});

test('names that are numbers are refused', () => {
  expect(refusalOf(LIKELY_SOURCES, Float64Array.from([1]), RATES, 50, 0.05)).toContain('words');
});
