import { expect, test } from 'vitest';
import { formatAxisLabel, formatOn, formatTo, resolutionOf } from '../../src/chart/chart-number.ts';
import { axis } from '../support/chart-cases.ts';

test.each([
  [0, 150, 0.1],
  [0, 7000, 1],
  [0, 1e6, 1],
  [0, 0.12, 0.0001],
  [3, 3, 0.001],
  [0, 0, 0.001],
])('an axis from %d to %d is read in steps of %d', (from, to, step) => {
  expect(resolutionOf({ from, to })).toBe(step);
});

test.each([
  [2462.7, 1, '2463'],
  [0.165, 0.0001, '0.165'],
  [-0.02, 0.001, '−0.02'],
  [12_345, 1, '12\u202f345'],
  [1e-12, 0.001, '0'],
  [1.1874999999999998, 0.001, '1.188'],
  [-1e-12, 0.001, '0'],
  [Number.NaN, 1, ''],
  [Number.POSITIVE_INFINITY, 1, ''],
])('%d to a step of %d is written %s', (value, step, text) => {
  expect(formatTo(value, step)).toBe(text);
});

test('a value has its unit beside it, a plain number has none', () => {
  expect(formatOn(axis('', 'rpm', 0, 7000), 2463)).toBe('2463\u00a0rpm');
  expect(formatOn(axis('', '', 0, 5), 3.42)).toBe('3.42');
  expect(formatOn(axis('', 'deg', 0, 5), 3.5)).toBe('3.5°');
});

test('an axis is labelled with its unit', () => {
  expect(formatAxisLabel({ label: 'Road speed', unit: 'mph' })).toBe('Road speed, mph');
  expect(formatAxisLabel({ label: 'Density', unit: 'kg/m^3' })).toBe('Density, kg/m³');
  expect(formatAxisLabel({ label: 'Axle ratio', unit: '' })).toBe('Axle ratio');
});
