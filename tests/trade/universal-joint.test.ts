import { describe, expect, test } from 'vitest';
import type { FunctionDeclaration } from '../../src/language/functions/declaration.ts';
import {
  drivenTurn,
  isBent,
  isBeyond,
  JOINT_ACCELERATION,
  JOINT_LAG,
  JOINT_SPEED_RATIO,
  largestLag,
  speedRatio,
} from '../../src/trade/universal-joint.ts';

const DEG = Math.PI / 180;
const BENDS = [0.5, 3, 10, 20, 45].map((bend) => bend * DEG);

/** Runs a declaration on numbers. */
function run(declaration: FunctionDeclaration, ...numbers: number[]): number {
  if (declaration.work.type !== 'each') throw new Error('not element by element');
  return declaration.work.run(...numbers);
}

describe('the speed of the driven yoke', () => {
  test.each(BENDS)('at %d rad of bend runs between cos and 1/cos of the bend', (bend) => {
    expect(speedRatio(bend, 0)).toBeCloseTo(1 / Math.cos(bend), 12);
    expect(speedRatio(bend, Math.PI / 2)).toBeCloseTo(Math.cos(bend), 12);
  });

  test.each(BENDS)('at %d rad of bend is how fast the turned angle grows', (bend) => {
    const step = 1e-6;
    for (const turn of [0.1, 0.7, 1.3, 2.2]) {
      const grown = drivenTurn(bend, turn + step) - drivenTurn(bend, turn - step);
      expect(grown / (2 * step)).toBeCloseTo(speedRatio(bend, turn), 7);
    }
  });

  test('does not waver in a straight joint', () => {
    expect(run(JOINT_SPEED_RATIO, 0, 1.2)).toBe(1);
  });
});

describe('the lead and lag', () => {
  test.each(BENDS)('at %d rad of bend is the most that the yokes part', (bend) => {
    const parted = Array.from({ length: 9000 }, (_, i) => {
      const turn = (i * Math.PI) / 18_000;
      return drivenTurn(bend, turn) - turn;
    });
    expect(run(JOINT_LAG, bend)).toBeCloseTo(Math.max(...parted), 7);
  });

  test('has even harmonics of 2/m times the m-th power of the tangent of half the bend', () => {
    const [bend, places] = [30 * DEG, 2000];
    for (const harmonic of [2, 4, 6]) {
      let sum = 0;
      for (let i = 0; i < places; i += 1) {
        const turn = -Math.PI / 2 + ((i + 0.5) * Math.PI) / places;
        sum += (drivenTurn(bend, turn) - turn) * Math.sin(harmonic * turn);
      }
      const wanted = (2 / harmonic) * Math.tan(bend / 2) ** harmonic;
      expect(Math.abs((2 * sum) / places)).toBeCloseTo(wanted, 9);
    }
  });

  test('does not care which way the joint is bent', () => {
    expect(largestLag(-0.2)).toBe(largestLag(0.2));
  });
});

describe('the acceleration', () => {
  test.each(BENDS)('at %d rad of bend is the steepest that the speed grows', (bend) => {
    const step = 1e-5;
    const slopes = Array.from({ length: 20_000 }, (_, i) => {
      const turn = (i * Math.PI) / 20_000;
      const grown = speedRatio(bend, turn + step) - speedRatio(bend, turn - step);
      // Seen over time, for a driving yoke at 1 rad/s.
      return grown / (2 * step);
    });
    const steepest = Math.max(...slopes);
    expect(run(JOINT_ACCELERATION, bend, 1) / steepest).toBeCloseTo(1, 5);
  });

  test('grows with the square of the speed', () => {
    const slow = run(JOINT_ACCELERATION, 0.05, 100);
    expect(run(JOINT_ACCELERATION, 0.05, 300)).toBeCloseTo(9 * slow, 9);
  });

  test('is the bend squared times the speed squared for small bends', () => {
    expect(run(JOINT_ACCELERATION, 3 * DEG, 500) / (3 * DEG * 500) ** 2).toBeCloseTo(1, 3);
  });

  test('is nought in a straight joint', () => {
    expect(run(JOINT_ACCELERATION, 0, 500)).toBe(0);
  });
});

describe('a joint bent too far', () => {
  test('to a right angle has no value, and says so', () => {
    for (const declaration of [JOINT_SPEED_RATIO, JOINT_LAG, JOINT_ACCELERATION]) {
      expect(run(declaration, Math.PI / 2, 1)).toBeNaN();
      expect(declaration.work.refuse(Math.PI / 2, 1)).toContain('does not turn');
      expect(declaration.work.refuse(0.1, 1)).toBeUndefined();
    }
  });

  test('beyond 30° has a value that is not to be trusted, alone or in a list', () => {
    expect(JOINT_LAG.outside!(31 * DEG)).toContain('30°');
    expect(JOINT_LAG.outside!(Float64Array.of(0.1, -31 * DEG))).toContain('30°');
    expect(JOINT_LAG.outside!(Float64Array.of(0.1, 0.2))).toBeUndefined();
  });

  test('is told by its size, whichever way it is bent', () => {
    expect([isBent(-1.6), isBent(1.5)]).toEqual([true, false]);
    expect([isBeyond(-0.2, 0.1), isBeyond(0.05, 0.1)]).toEqual([true, false]);
  });
});
