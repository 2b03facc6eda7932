import { describe, expect, test } from 'vitest';
import type { FunctionDeclaration } from '../../src/language/functions/declaration.ts';
import { EQUIVALENT_ANGLE, PAIR_SPEED_RATIO, PAIR_SWING } from '../../src/trade/joint-pair.ts';
import { largestLag, speedRatio } from '../../src/trade/universal-joint.ts';

const DEG = Math.PI / 180;

function run(declaration: FunctionDeclaration, ...degrees: number[]): number {
  if (declaration.work.type !== 'each') throw new Error('not element by element');
  return declaration.work.run(...degrees.map((degree) => degree * DEG));
}

const equivalent = (...degrees: number[]) => run(EQUIVALENT_ANGLE, ...degrees) / DEG;
const swing = (...degrees: number[]) => run(PAIR_SWING, ...degrees);

describe('two joints of equal angle', () => {
  test('cancel where yokes and planes match', () => {
    expect(equivalent(3, 3, 0)).toBe(0);
    expect(swing(3, 3, 0)).toBeLessThan(1e-14);
    for (const turn of [0, 17, 90, 200]) {
      expect(run(PAIR_SPEED_RATIO, 25, 25, 0, turn)).toBeCloseTo(1, 12);
    }
  });

  test('add up where the yokes are a quarter turn out', () => {
    expect(equivalent(3, 3, 90)).toBeCloseTo(3 * Math.SQRT2, 12);
    expect(swing(3, 3, 90)).toBeGreaterThan(1.99 * largestLag(3 * DEG));
  });

  test('waver the more the further the yokes are out', () => {
    const swings = [0, 5, 15, 30, 60, 90].map((phase) => swing(3, 3, phase));
    expect(swings).toEqual(swings.toSorted((a, b) => a - b));
  });

  test('cancel again where the yokes are half a turn out: the cross has no top', () => {
    expect(equivalent(3, 3, 180)).toBeLessThan(1e-6);
    expect(swing(3, 3, 180)).toBeLessThan(1e-12);
  });
});

describe('two joints', () => {
  test('with one of them straight are the other joint alone', () => {
    expect(equivalent(4, 0, 37)).toBeCloseTo(4, 12);
    expect(swing(4, 0, 0)).toBeCloseTo(largestLag(4 * DEG), 8);
    expect(run(PAIR_SPEED_RATIO, 4, 0, 0, 30)).toBeCloseTo(speedRatio(4 * DEG, 30 * DEG), 12);
  });

  test('have the root of the difference, and of the sum, of the squares', () => {
    expect(equivalent(5, 4, 0)).toBeCloseTo(3, 12);
    expect(equivalent(3, 4, 90)).toBeCloseTo(5, 12);
  });

  test('may be told in either order and with either sense of the phase', () => {
    expect(equivalent(2, 5, 25)).toBeCloseTo(equivalent(5, 2, -25), 12);
    expect(swing(2, 5, 25)).toBeCloseTo(swing(2, 5, -25), 9);
  });

  test.each([
    [3, 2, 0],
    [4, 1, 20],
    [6, 5, 45],
    [6, 6, 90],
    [5.9, 0.4, -70],
  ])(
    'bent by %d° and %d°, %d° out, swing as the equivalent joint does, within 0.3 %%',
    (...pair) => {
      expect(swing(...pair) / largestLag(equivalent(...pair) * DEG)).toBeCloseTo(1, 2);
      expect(Math.abs(swing(...pair) / largestLag(equivalent(...pair) * DEG) - 1)).toBeLessThan(
        3e-3,
      );
    },
  );

  test('have a speed ratio that is how fast the pinion turns', () => {
    const ratios = Array.from({ length: 3600 }, (_, i) =>
      run(PAIR_SPEED_RATIO, 12, 7, 33, (i * 360) / 3600),
    );
    const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
    expect(mean).toBeCloseTo(1, 9);
  });
});

describe('what the pair is not good for', () => {
  test('the equivalent angle is doubted above 6°', () => {
    expect(EQUIVALENT_ANGLE.outside!(7 * DEG, DEG, 0)).toContain('6°');
    expect(EQUIVALENT_ANGLE.outside!(DEG, Float64Array.of(1, 7 * DEG), 0)).toContain('6°');
    expect(EQUIVALENT_ANGLE.outside!(DEG, 5 * DEG, 0)).toBeUndefined();
  });

  test('a joint at a right angle does not turn', () => {
    for (const declaration of [PAIR_SWING, PAIR_SPEED_RATIO]) {
      expect(run(declaration, 3, 90, 0, 0)).toBeNaN();
      expect(declaration.work.refuse(3 * DEG, 90 * DEG, 0, 0)).toContain('does not turn');
    }
  });
});
