import { expect, test } from 'vitest';
import { axisUnit, extent, finiteOr } from '../../src/sheet/sweep-axis.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

test('an axis is in its unit, or in that of the page', () => {
  expect(axisUnit(undefined, 'metric')).toEqual({ symbol: '', factor: 1 });
  expect(axisUnit(parseUnit('in'), undefined).symbol).toBe('in');
  expect(axisUnit(parseUnit('in'), 'metric').symbol).toBe('mm');
});

test('a number is in the unit, and what is none stays none', () => {
  expect(finiteOr(6, 2)).toBe(3);
  expect(finiteOr(Number.NaN, 2)).toBeUndefined();
  expect(finiteOr(undefined, 2)).toBeUndefined();
});

const line = (...ys: readonly number[]) => ({
  label: '',
  points: ys.map((y, x) => [x, y] as const),
  now: undefined,
});

test('lines that come near to nothing are judged by their height above it', () => {
  expect(extent([line(1, 10)])).toEqual({ from: 0, to: 10 });
  expect(extent([line(8, 10)])).toEqual({ from: 8, to: 10 });
  expect(extent([line(-1, 10)])).toEqual({ from: -1, to: 10 });
  expect(extent([line(Number.NaN)])).toEqual({ from: 0, to: 1 });
});
