import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CLUTCH_INNER_DIAMETERS } from '../../src/trade/clutch-inner-diameter.ts';
import { CLUTCH_TORQUE_BY_WEAR } from '../../src/trade/clutch-torque.ts';
import { CLAMP_FOR_PRESSURE } from '../../src/trade/lining-pressure.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const [FACES, FRICTION, PRESSURE, OUTER] = [2, 0.25, 85_000, 0.36];
const inner = (torque: number) =>
  Array.from(
    runFunction(CLUTCH_INNER_DIAMETERS, torque, FACES, FRICTION, PRESSURE, OUTER) as Float64Array,
  );

/** What a lining of this inner diameter carries, by the other two functions. */
function carries(diameter: number): number {
  const clamp = runFunction(CLAMP_FOR_PRESSURE, PRESSURE, OUTER, diameter) as number;
  return runFunction(CLUTCH_TORQUE_BY_WEAR, FACES, FRICTION, clamp, OUTER, diameter) as number;
}
const HIGHEST = carries(OUTER / Math.sqrt(3));

test('there are always two, the wide lining first', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), (share) => {
      const [wide, narrow] = inner(share * HIGHEST);
      expect(wide).toBeLessThan(narrow!);
      expect(carries(wide!) / (share * HIGHEST)).toBeCloseTo(1, 9);
      expect(carries(narrow!) / (share * HIGHEST)).toBeCloseTo(1, 9);
    }),
  );
});

describe('at the ends', () => {
  test('the two meet where a lining carries most, and are still told as two', () => {
    const [wide, narrow] = inner(HIGHEST);
    expect(wide! / OUTER).toBeCloseTo(1 / Math.sqrt(3), 6);
    expect(narrow! / OUTER).toBeCloseTo(1 / Math.sqrt(3), 6);
  });

  test('no torque at all needs no hole, or no lining', () => {
    const [wide, narrow] = inner(0);
    expect(wide).toBeCloseTo(0, 12);
    expect(narrow).toBeCloseTo(OUTER, 12);
  });

  test('more than it can carry is refused, with what it can', () => {
    expect(
      refusalOf(CLUTCH_INNER_DIAMETERS, 2 * HIGHEST, FACES, FRICTION, PRESSURE, OUTER),
    ).toContain('carries 50 % of the torque at most');
  });
});

test.each([
  ['no faces', [300, 0, 0.25, 85_000, 0.36]],
  ['no friction', [300, 2, 0, 85_000, 0.36]],
  ['no pressure', [300, 2, 0.25, 0, 0.36]],
  ['no diameter', [300, 2, 0.25, 85_000, 0]],
])('%s is refused', (_, values) => {
  expect(refusalOf(CLUTCH_INNER_DIAMETERS, ...values)).toContain('above 0');
});

test('a torque below nought is refused', () => {
  expect(refusalOf(CLUTCH_INNER_DIAMETERS, -1, 2, 0.25, 85_000, 0.36)).toContain('not below 0');
});
