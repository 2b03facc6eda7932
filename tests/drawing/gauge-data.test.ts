import { expect, test } from 'vitest';
import { isKnown, sideOf } from '../../src/drawing/gauge-data.ts';

const least = { value: 0.125, text: '0.125 in' };
const most = { value: 0.2, text: '0.200 in' };

test.each([
  [0.124, 'below'],
  [0.125, undefined],
  [0.16, undefined],
  [0.2, undefined],
  [0.201, 'above'],
  [Number.NaN, undefined],
] as const)('%d lies %s of the window; its ends belong to it', (value, side) => {
  expect(sideOf({ least, most }, value)).toBe(side);
});

test('without a limit nothing is beyond it', () => {
  expect(sideOf({ least }, 1e9)).toBeUndefined();
  expect(sideOf({ most }, -1e9)).toBeUndefined();
});

test('a value is known when it is a number', () => {
  expect(isKnown({ value: 0, text: '0' })).toBe(true);
  expect(isKnown({ value: Number.NaN, text: '' })).toBe(false);
});
