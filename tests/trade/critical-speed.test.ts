import { describe, expect, test } from 'vitest';
import { TUBE_CRITICAL_SPEED, whirl } from '../../src/trade/critical-speed.ts';
import { refusalOf } from '../support/run-function.ts';

const INCH = 0.0254;
const STEEL: readonly [number, number] = [205e9, 7850];
const rpm = (speed: number) => (speed * 30) / Math.PI;

describe('the critical speed of a tube', () => {
  test('is that of the formula as the trade writes it, in rpm', () => {
    const [outer, bore, length] = [3 * INCH, 2.834 * INCH, 52 * INCH];
    const written =
      (7.5 * Math.PI * Math.sqrt(205e9 / 7850) * Math.sqrt(outer ** 2 + bore ** 2)) / length ** 2;
    expect(rpm(whirl(outer, bore, length, ...STEEL))).toBeCloseTo(written, 8);
  });

  test('falls with the square of the length', () => {
    const [short, long] = [1, 2].map((length) => whirl(0.08, 0.076, length, ...STEEL));
    expect(short! / long!).toBeCloseTo(4, 12);
  });

  test('hardly asks for the wall: twice as thick is 3 % slower', () => {
    const [thin, thick] = [0.002, 0.004].map((wall) => whirl(0.076, 0.076 - 2 * wall, 1, ...STEEL));
    expect(thick! / thin!).toBeGreaterThan(0.96);
    expect(thick! / thin!).toBeLessThan(1);
  });

  test('of aluminium is that of steel within a few parts in a hundred', () => {
    const [steel, aluminium] = [
      whirl(0.076, 0.072, 1.2, ...STEEL),
      whirl(0.076, 0.072, 1.2, 68.9e9, 2710),
    ];
    expect(aluminium / steel).toBeCloseTo(0.987, 3);
  });
});

describe('what is refused, and what is doubted', () => {
  const { outside } = TUBE_CRITICAL_SPEED;

  test.each<[string, number[], string]>([
    ['a bore as wide as the tube', [0.08, 0.08, 1, ...STEEL], 'smaller than its outside'],
    ['a bore below nought', [0.08, -0.01, 1, ...STEEL], 'not below 0'],
    ['a length of nought', [0.08, 0.07, 0, ...STEEL], 'longer than 0'],
    ['no stiffness', [0.08, 0.07, 1, 0, 7850], 'above 0'],
    ['a length that is no number', [0.08, 0.07, Number.NaN, ...STEEL], 'longer than 0'],
  ])('%s', (_, shaft, why) => {
    expect(refusalOf(TUBE_CRITICAL_SPEED, ...shaft)).toContain(why);
  });

  test('a tube that can be is not refused', () => {
    expect(refusalOf(TUBE_CRITICAL_SPEED, 0.08, 0.076, 1, ...STEEL)).toBeUndefined();
  });

  test('a stubby shaft gives in shear, and the sheet says so', () => {
    expect(outside!(0.08, 0.07, 0.5)).toContain('shear');
    expect(outside!(0.08, 0.07, 1)).toBeUndefined();
    expect(outside!(new Float64Array([0.08]), new Float64Array([0.07]), 0.5)).toBeUndefined();
  });
});
