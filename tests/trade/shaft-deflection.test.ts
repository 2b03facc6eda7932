import { describe, expect, test } from 'vitest';
import { SHAFT_DEFLECTION } from '../../src/trade/shaft-deflection.ts';

const { work } = SHAFT_DEFLECTION;
const STIFF = [2, 1e9, 1e-8] as const;
const bend = (load: number, at: number, place: number): number =>
  work.type === 'each' ? work.run(load, at, place, ...STIFF) : Number.NaN;

describe('the bending of a shaft on two supports', () => {
  test('under a load in the middle is FL³/48EI', () => {
    expect(bend(10, 1, 1)).toBeCloseTo((10 * 2 ** 3) / (48 * 1e9 * 1e-8), 12);
  });

  test('is the same with load and place changed over', () => {
    expect(bend(10, 0.4, 1.3)).toBeCloseTo(bend(10, 1.3, 0.4), 14);
  });

  test('is the same seen from the other end', () => {
    expect(bend(10, 0.4, 1.3)).toBeCloseTo(bend(10, 1.6, 0.7), 14);
  });

  test('is nought over a support', () => {
    expect(bend(10, 0.4, 0)).toBe(0);
    expect(bend(10, 0.4, 2)).toBe(0);
  });
});

test.each([
  ['a shaft without length', [1, 0, 0, 0, 1e9, 1e-8], 'longer than 0'],
  ['a shaft without stiffness', [1, 1, 1, 2, 0, 1e-8], 'above 0'],
  ['a load beyond the support', [1, 2.1, 1, 2, 1e9, 1e-8], 'between the supports'],
  ['a place before the support', [1, 1, -0.1, 2, 1e9, 1e-8], 'between the supports'],
])('%s is refused', (_, shaft, why) => {
  expect(work.refuse(...shaft)).toContain(why);
});

test('a load on the shaft is not refused', () => {
  expect(work.refuse(1, 1, 1, 2, 1e9, 1e-8)).toBeUndefined();
});
