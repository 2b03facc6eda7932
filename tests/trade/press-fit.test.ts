import { describe, expect, test } from 'vitest';
import { BORE_CLOSING, PRESS_FIT_PRESSURE } from '../../src/trade/press-fit.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const [STEEL, BRONZE] = [205e9, 60e9];
const INCH = 0.0254;
/** Interference, fit, bore, metal around, moduli: a pilot bush in a crank. */
const BUSH = [0.0015 * INCH, 1.001 * INCH, 0.753 * INCH, 2.5 * INCH, BRONZE, STEEL] as const;
const pressure = (...values: number[]) => runFunction(PRESS_FIT_PRESSURE, ...values) as number;
const closing = (...values: number[]) => runFunction(BORE_CLOSING, ...values) as number;

describe('the pressure', () => {
  test('of a bar in a ring of the same metal needs no Poisson ratio', () => {
    const found = pressure(1e-4, 0.1, 0, 0.15, 210e9, 210e9, 0.3, 0.3);
    const [inner, outer] = [0.1 ** 2, 0.15 ** 2];
    expect(found).toBeCloseTo((210e9 * 1e-4 * (outer - inner)) / (2 * 0.1 * outer), 2);
  });

  test('grows in step with the interference', () => {
    const [interference, ...rest] = BUSH;
    expect(pressure(2 * interference, ...rest)).toBeCloseTo(2 * pressure(...BUSH), 3);
  });
});

describe('the bore', () => {
  test('of a pilot bush closes by most of the interference', () => {
    const share = closing(...BUSH) / BUSH[0];
    expect(share).toBeGreaterThan(0.85);
    expect(share).toBeLessThan(1);
  });

  test('of a skin in a rock closes by all of it', () => {
    const found = closing(1e-5, 0.02, 0.019999, 10, 1e9, 1e15, 0.33, 0.29);
    expect(found).toBeCloseTo(1e-5, 9);
  });

  test('stays where nothing presses', () => {
    expect(closing(0, ...BUSH.slice(1))).toBe(0);
  });

  test('has no bore to close in a bar', () => {
    expect(closing(1e-5, 0.02, 0, 0.05, STEEL, STEEL)).toBe(0);
  });
});

test.each([
  ['a bush without a wall', [1e-5, 0.02, 0.02, 0.05, BRONZE, STEEL], 'smaller than its outside'],
  ['a crank without metal', [1e-5, 0.02, 0.01, 0.02, BRONZE, STEEL], 'metal around'],
  ['a bush of jelly', [1e-5, 0.02, 0.01, 0.05, 0, STEEL], 'above 0'],
])('%s is refused', (_, values, words) => {
  expect(refusalOf(PRESS_FIT_PRESSURE, ...values)).toContain(words);
  expect(refusalOf(BORE_CLOSING, ...values)).toContain(words);
});

test('a bush that has yielded, and one that falls out, are told', () => {
  const outside = (interference: number) =>
    BORE_CLOSING.outside!(interference, ...BUSH.slice(1), 0.33, 0.29);
  expect(outside(BUSH[0])).toBeUndefined();
  expect(outside(2 * BUSH[0])).toContain('yielded');
  expect(outside(-BUSH[0])).toContain('nothing presses');
});

test('a list is worked without a word about its range', () => {
  const list = Float64Array.of(1e-5, 2e-5);
  expect(BORE_CLOSING.outside!(list, ...BUSH.slice(1), 0.33, 0.29)).toBeUndefined();
});
