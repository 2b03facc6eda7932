import { describe, expect, test } from 'vitest';
import type { FunctionDeclaration } from '../../src/language/functions/declaration.ts';
import {
  DIAL_DIRECTION,
  DIAL_GAIN,
  DIAL_OFFSET,
  DIAL_OVAL,
  DIAL_OVAL_DIRECTION,
  DIAL_RESIDUALS,
  DIAL_RUNOUT,
  DIAL_SCATTER,
} from '../../src/trade/dial-runout.ts';

const DEGREE = Math.PI / 180;
const list = (numbers: readonly number[]) => Float64Array.from(numbers);
const call = (
  { work, outside }: FunctionDeclaration,
  readings: readonly number[],
  degrees: readonly number[],
) => {
  if (work.type !== 'whole') throw new Error('works on whole values');
  const given = [list(readings), list(degrees.map((degree) => degree * DEGREE))];
  return {
    refused: work.refuse(...given),
    value: () => work.run(...given) as number,
    warned: outside?.(...given),
  };
};
const QUARTERS = [0, 90, 180, 270];
const SIXTHS = [0, 60, 120, 180, 240, 300];

describe('0, +3, −2, +3', () => {
  const readings = [0, 3, -2, 3];

  test('is an offset of 1 toward 12 o’clock, though the total is 5', () => {
    expect(call(DIAL_OFFSET, readings, QUARTERS).value()).toBeCloseTo(1, 12);
    expect(call(DIAL_DIRECTION, readings, QUARTERS).value()).toBeCloseTo(0, 12);
  });

  test('is an oval of 2, high at 3 and at 9 o’clock', () => {
    const oval = call(DIAL_OVAL, readings, QUARTERS);
    expect(oval.value()).toBeCloseTo(2, 12);
    expect(oval.warned).toContain('four positions');
    const direction = call(DIAL_OVAL_DIRECTION, readings, QUARTERS).value();
    expect(direction / DEGREE).toBeCloseTo(90, 9);
  });
});

test.each([0, 45, 90, 180, 225, 359])('a high side at %i° is found there', (toward) => {
  const at = SIXTHS;
  const readings = at.map((degree) => 4 * Math.cos((degree - toward) * DEGREE));
  expect(call(DIAL_DIRECTION, readings, at).value() / DEGREE).toBeCloseTo(toward, 9);
});

test('readings that are all the same have no direction, and nought is said', () => {
  expect(call(DIAL_DIRECTION, [3, 3, 3, 3], QUARTERS).value()).toBe(0);
  expect(call(DIAL_DIRECTION, [0, 0, 0, 0], QUARTERS).value()).toBe(0);
});

test('scatter is what a three-lobed bore leaves', () => {
  const readings = [1, -1, 1, -1, 1, -1];
  expect(call(DIAL_SCATTER, readings, SIXTHS).value()).toBeCloseTo(Math.sqrt(6), 12);
  expect(call(DIAL_RESIDUALS, readings, SIXTHS).value()).toHaveLength(6);
});

test.each([
  [
    'lists of unlike length',
    DIAL_OFFSET,
    [1, 2, 3, 4],
    [0, 90, 180],
    'leave a blocked position out',
  ],
  ['two positions', DIAL_OFFSET, [1, 2], [0, 180], '2 different positions are too few'],
  ['one position read three times', DIAL_OFFSET, [1, 2, 3], [0, 0, 360], 'one position is too few'],
  ['nothing', DIAL_OFFSET, [], [], '0 different positions are too few'],
  ['an oval from three', DIAL_OVAL, [1, 2, 3], [0, 120, 240], 'this takes 4'],
  ['scatter from five', DIAL_SCATTER, [1, 2, 3, 4, 5], [0, 72, 144, 216, 288], 'take 6 or more'],
  [
    'scatter from eight at four',
    DIAL_SCATTER,
    [1, 2, 3, 4, 1, 2, 3, 4],
    [...QUARTERS, ...QUARTERS],
    'at 4 positions',
  ],
])('%s is refused', (_, declaration, readings, degrees, words) => {
  expect(call(declaration, readings, degrees).refused).toContain(words);
});

test('one position missing of eight is no matter, half of the circle is', () => {
  const seven = [0, 45, 90, 180, 225, 270, 315];
  expect(call(DIAL_OFFSET, seven, seven).warned).toBeUndefined();
  const half = [0, 30, 60, 90, 120, 150, 180];
  expect(call(DIAL_OFFSET, half, half).warned).toContain('times as uncertain');
  expect(call(DIAL_GAIN, half, half).value()).toBeGreaterThan(1);
});

test.each(DIAL_RUNOUT)('$name says where it comes from and what it is good for', (declaration) => {
  expect(declaration.source).toContain('least squares');
  expect(declaration.validity).toContain('positions');
});
