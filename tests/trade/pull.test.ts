import { describe, expect, test } from 'vitest';
import { PULL_AT_SPEED, SPARE_PULL } from '../../src/trade/pull.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const list = (...numbers: number[]) => Float64Array.from(numbers);
const CURVE = [list(100, 300, 500), list(120, 200, 160)] as const;
const pull = (speed: number, ...start: number[]) =>
  Array.from(
    runFunction(PULL_AT_SPEED, speed, ...CURVE, list(10, 5), 500, ...start) as Float64Array,
  );

describe('the pull at a speed', () => {
  test('is torque times turns for the road covered, gear by gear', () => {
    expect(pull(30)).toEqual([200 * 10, 140 * 5]);
  });

  test('is 0 in a gear that is past its limit', () => {
    expect(pull(51)).toEqual([0, expect.closeTo(5 * 182, 9)]);
  });

  test('is there at the limit itself', () => {
    expect(pull(50)[0]).toBe(1600);
    expect(pull(50 * (1 + 1e-15))[0]).toBe(1600);
  });

  test('is multiplied behind a converter at a standstill', () => {
    expect(pull(0, 300, 2, 0.04)).toEqual([4000, 2000]);
  });

  test('has no value without a gear', () => {
    expect(refusalOf(PULL_AT_SPEED, 30, ...CURVE, list(), 500)).toBe('there is no gear');
  });

  test('warns of a converter beyond belief', () => {
    expect(PULL_AT_SPEED.outside!(0, ...CURVE, list(10), 500, 300, 3, 0)).toMatch(/more power/);
  });
});

describe('the pull to spare', () => {
  const spare = (grip: number, ...start: number[]) =>
    Array.from(
      runFunction(SPARE_PULL, ...CURVE, list(10, 5), 500, 100, 0, grip, ...start) as Float64Array,
    );

  test('is the best of each gear, less the road load there', () => {
    const rising = 100 * (1 + 30 / (147 * 0.3048));
    expect(spare(1e9)[0]).toBeCloseTo(2000 - rising, 9);
  });

  test('is no more than grip allows', () => {
    expect(spare(1000)[0]).toBeLessThanOrEqual(900);
    expect(spare(1000)[1]).toBeCloseTo(spare(1e9)[1]!, 12);
  });

  test('in a gear above the 1st counts from where the clutch is closed', () => {
    const [first, second] = Array.from(
      runFunction(
        SPARE_PULL,
        list(100, 200),
        list(200, 200),
        list(10, 5),
        200,
        100,
        0,
        1e9,
        0,
        1,
        0,
        20,
      ) as Float64Array,
    );
    expect(first).toBeCloseTo(2000 - 100, 9);
    expect(second).toBeCloseTo(1000 - 100 * (1 + 20 / 20), 9);
  });

  test('heeds the converter', () => {
    expect(spare(1e9, 300, 2, 0.04)[0]).toBeCloseTo(3900, 9);
  });

  test('has no value for gears out of order', () => {
    expect(refusalOf(SPARE_PULL, ...CURVE, list(5, 10), 500, 100, 0, 1e9)).toMatch(/in order/);
  });

  test('warns of a curve that ends early', () => {
    expect(SPARE_PULL.outside!(...CURVE, list(10), 600, 100, 0, 1e9, 0, 1, 0, 45)).toMatch(
      /ends before/,
    );
  });
});
