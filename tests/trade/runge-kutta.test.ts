import { describe, expect, test } from 'vitest';
import { type Motion, stepMotion } from '../../src/trade/runge-kutta.ts';

/** 1500 kg pushed by 3000 N against a drag of 0.528 V². */
const [MASS, PUSH, DRAG] = [1500, 3000, 0.528];
const rate = (speed: number) => (PUSH - DRAG * speed * speed) / MASS;
const TERMINAL = Math.sqrt(PUSH / DRAG);

type Step = (rate: (speed: number) => number, from: Motion, step: number) => Motion;

const euler: Step = (rise, { speed, distance }, h) => ({
  speed: speed + h * rise(speed),
  distance: distance + h * speed,
});
const midpoint: Step = (rise, { speed, distance }, h) => {
  const half = speed + (h / 2) * rise(speed);
  return { speed: speed + h * rise(half), distance: distance + h * half };
};

describe('a constant push against air, 10 s', () => {
  test.each<[string, Step, number, number]>([
    ['Euler’s method', euler, 6.48e-3, 3.24e-3],
    ['the midpoint rule', midpoint, 8.7e-6, 2.2e-6],
    ['the method used here', stepMotion, 9.5e-12, 5.9e-13],
  ])('%s is as far out as is known at steps of 0.1 and 0.05 s', (_, step, coarse, fine) => {
    const found = [0.1, 0.05].map((h) => Math.abs(motionAfter(step, 10, h).speed - speedAt(10)));
    expect(found[0]! / coarse).toBeGreaterThan(0.9);
    expect(found[0]! / coarse).toBeLessThan(1.1);
    expect(found[1]! / fine).toBeGreaterThan(0.8);
    expect(found[1]! / fine).toBeLessThan(1.2);
  });

  test('halving the step makes its error a sixteenth', () => {
    const errors = [1, 0.5, 0.25].map((h) =>
      Math.abs(motionAfter(stepMotion, 10, h).distance - distanceAt(10)),
    );
    expect(Math.log2(errors[0]! / errors[1]!)).toBeCloseTo(4, 0);
    expect(Math.log2(errors[1]! / errors[2]!)).toBeCloseTo(4, 0);
  });

  test('Euler’s distance is 0.96 m short at 0.1 s', () => {
    expect(distanceAt(10) - motionAfter(euler, 10, 0.1).distance).toBeCloseTo(0.96, 2);
  });
});

test('a constant acceleration is met exactly', () => {
  const { speed, distance } = stepMotion(() => 2, { speed: 3, distance: 5 }, 4);
  expect([speed, distance]).toEqual([11, 33]);
});

test('a step of no time changes nothing', () => {
  expect(stepMotion(rate, { speed: 7, distance: 9 }, 0)).toEqual({ speed: 7, distance: 9 });
});

function motionAfter(step: Step, time: number, h: number): Motion {
  let motion: Motion = { speed: 0, distance: 0 };
  for (let i = 0; i < Math.round(time / h); i += 1) motion = step(rate, motion, h);
  return motion;
}

function speedAt(time: number): number {
  return TERMINAL * Math.tanh((PUSH * time) / (MASS * TERMINAL));
}

function distanceAt(time: number): number {
  return ((MASS * TERMINAL ** 2) / PUSH) * Math.log(Math.cosh((PUSH * time) / (MASS * TERMINAL)));
}
