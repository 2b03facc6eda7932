import { describe, expect, test } from 'vitest';
import { TOP_SPEEDS } from '../../src/trade/top-speed.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const list = (...numbers: number[]) => Float64Array.from(numbers);
const CURVE = [list(100, 500), list(200, 200)] as const;
const top = (turns: readonly number[], ...rest: number[]) =>
  Array.from(runFunction(TOP_SPEEDS, ...CURVE, list(...turns), 500, ...rest) as Float64Array);

describe('the top speeds', () => {
  test('end at the limit or where the air takes all the pull', () => {
    expect(top([10, 4], 0, 0.5)).toEqual([50, expect.closeTo(40, 9)]);
  });

  test('are lower behind a converter that slips, in a gear that ends at the limit', () => {
    expect(top([10], 0, 0.5, 0, 1, 0.04)[0]).toBeCloseTo(48, 9);
  });

  test('are not touched by slip in a gear that ends on a level pull', () => {
    expect(top([4], 0, 0.5, 0, 1, 0.04)[0]).toBeCloseTo(40, 9);
  });

  test('are those of the gears alone without rolling resistance and air', () => {
    expect(top([10, 4], 0, 0)).toEqual([50, 125]);
  });

  test('are 0 where the car cannot be held', () => {
    expect(top([10, 0.1], 1000, 0.5)[1]).toBe(0);
  });

  test('have no value for a curve of no points', () => {
    expect(refusalOf(TOP_SPEEDS, list(), list(), list(10), 500, 0, 0.5)).toMatch(/no points/);
  });
});

test('a top speed where the curve ends before the limit is warned of', () => {
  expect(TOP_SPEEDS.outside!(...CURVE, list(10), 600, 0, 0.5, 0, 1, 0, 45)).toMatch(/ends before/);
});
