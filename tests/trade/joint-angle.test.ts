import { describe, expect, test } from 'vitest';
import type { FunctionDeclaration } from '../../src/language/functions/declaration.ts';
import { BEND_TWIST, JOINT_ANGLE } from '../../src/trade/joint-angle.ts';

const DEG = Math.PI / 180;

function run(declaration: FunctionDeclaration, ...degrees: number[]): number {
  if (declaration.work.type !== 'each') throw new Error('not element by element');
  return declaration.work.run(...degrees.map((degree) => degree * DEG)) / DEG;
}

const angle = (...degrees: number[]) => run(JOINT_ANGLE, ...degrees);
const twist = (...degrees: number[]) => run(BEND_TWIST, ...degrees);

describe('the working angle', () => {
  test('in one plane is the difference of the slopes', () => {
    expect(angle(3, 0, 1.2, 0)).toBeCloseTo(1.8, 12);
    expect(angle(-3, 0, 1.2, 0)).toBeCloseTo(4.2, 12);
    expect(angle(0, 5, 0, -1)).toBeCloseTo(6, 12);
  });

  test('is the arc cosine of the two directions, side view and plan together', () => {
    const [side, plan] = [Math.tan(3 * DEG), Math.tan(4 * DEG)];
    const wanted = Math.acos(1 / Math.hypot(1, side, plan)) / DEG;
    expect(angle(0, 0, 3, 4)).toBeCloseTo(wanted, 10);
    expect(angle(0, 0, 3, 4)).toBeLessThan(5);
  });

  test('does not change when the floor is out of level, in side view', () => {
    expect(angle(4.7, 0, 2.9, 0)).toBeCloseTo(angle(4.2, 0, 2.4, 0), 12);
  });

  test('is 0 between parallel lines, and keeps its digits near 0', () => {
    expect(angle(3, 1, 3, 1)).toBe(0);
    expect(angle(3, 0, 3 + 1e-9, 0)).toBeCloseTo(1e-9, 15);
  });
});

describe('the twist between the bend planes', () => {
  test('is 0 in a Z and in a W: both are flat', () => {
    expect(twist(3, 0, 5, 0, 3, 0)).toBe(0);
    expect(twist(3, 0, 5, 0, 7, 0)).toBe(0);
  });

  test('is a quarter turn where one joint bends down and the other aside', () => {
    expect(Math.abs(twist(0, 0, 2, 0, 2, 3))).toBeCloseTo(90, 6);
  });

  test('is positive clockwise, looking forward', () => {
    // Down at the front joint is 6 o'clock, down and to the left at the rear one past it: 7 o'clock.
    expect(twist(0, 0, 2, 0, 4, -1)).toBeCloseTo(26.5, 1);
    expect(twist(0, 0, 2, 0, 4, 1)).toBeCloseTo(-26.5, 1);
  });

  test('stays between minus and plus a quarter turn', () => {
    for (const plan of [-5, -2, 0.5, 3, 6]) {
      expect(Math.abs(twist(1, 0, 3, plan, 4, -plan / 2))).toBeLessThanOrEqual(90);
    }
  });

  test('counts as 0 where a joint is not bent', () => {
    expect(twist(3, 0, 3, 0, 5, 1)).toBe(0);
  });
});

test('a line that stands upright has no working angle, and says so', () => {
  expect(angle(90, 0, 1, 0)).toBeNaN();
  expect(JOINT_ANGLE.work.refuse(Math.PI / 2, 0, 0, 0)).toContain('upright');
  expect(BEND_TWIST.work.refuse(0, 0, 0, 0, 0, Math.PI)).toContain('upright');
  expect(BEND_TWIST.work.refuse(0, 0, 0, 0, 0, 0)).toBeUndefined();
});
