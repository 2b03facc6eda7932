import { describe, expect, test } from 'vitest';
import { BEST_SHIFT_SPEEDS } from '../../src/trade/best-shift.ts';
import { createPullLine, pullAt } from '../../src/trade/pull-line.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const list = (...numbers: number[]) => Float64Array.from(numbers);
const SPEEDS = list(100, 200, 300, 400, 500);
const TORQUES = list(160, 190, 220, 190, 120);
const best = (turns: readonly number[], limit = 500) =>
  Array.from(
    runFunction(BEST_SHIFT_SPEEDS, SPEEDS, TORQUES, list(...turns), limit) as Float64Array,
  );

describe('the best speed to change up at', () => {
  test('is where the next gear pulls as hard', () => {
    const [shift] = best([10, 8]);
    const drive = {
      speeds: SPEEDS,
      torques: TORQUES,
      limit: 500,
      launchSpeed: 0,
      multiplication: 1,
      slip: 0,
    };
    const [line, next] = [createPullLine(drive, 10), createPullLine(drive, 8)];
    expect(shift).toBeLessThan(500);
    expect(pullAt(line, shift! / 10)).toBeCloseTo(pullAt(next, shift! / 10), 9);
  });

  test('is the limit where the gap to the next gear is wide', () => {
    expect(best([10, 4])[0]).toBe(500);
  });

  test('is the limit in the last gear', () => {
    expect(best([10, 8])[1]).toBe(500);
    expect(best([10])).toEqual([500]);
  });

  test('heeds a lower limit', () => {
    expect(best([10, 8], 350)).toEqual([350, 350]);
  });

  test('lies near the lowest speed for an engine that only falls', () => {
    const falling = list(500, 400, 300, 200, 100);
    const shift = runFunction(BEST_SHIFT_SPEEDS, SPEEDS, falling, list(10, 9), 500) as Float64Array;
    expect(shift[0]).toBeGreaterThan(100);
    expect(shift[0]).toBeLessThan(500);
  });
});

test('gears out of order have no best shift', () => {
  expect(refusalOf(BEST_SHIFT_SPEEDS, SPEEDS, TORQUES, list(8, 10), 500)).toMatch(/in order/);
});

test('a curve that ends before the limit is warned of', () => {
  expect(BEST_SHIFT_SPEEDS.outside!(SPEEDS, TORQUES, list(10, 8), 600)).toMatch(/ends before/);
});
