import { describe, expect, test } from 'vitest';
import { createPullLine, pullAt } from '../../src/trade/pull-line.ts';
import { loadAt } from '../../src/trade/road-load.ts';
import { bestOf, topSpeedOf } from '../../src/trade/spare-line.ts';

const DRIVE = {
  speeds: Float64Array.from([100, 200, 300, 400, 500]),
  torques: Float64Array.from([160, 190, 220, 200, 150]),
  limit: 500,
  launchSpeed: 0,
  multiplication: 1,
  slip: 0,
};
const LOAD = { rolling: 140, air: 0.5, doublesAt: 45 };

describe('the most that is left over', () => {
  test.each([
    ['in a short gear, with grip to spare', 12, Number.POSITIVE_INFINITY],
    ['in a short gear, where the tyres let go', 12, 2000],
    ['in a tall gear', 6, Number.POSITIVE_INFINITY],
    ['in a gear that cannot hold the car', 0.5, Number.POSITIVE_INFINITY],
  ])('%s is that of a search step by step', (_, turns, grip) => {
    const line = createPullLine(DRIVE, turns);
    const spare = (speed: number) => Math.min(pullAt(line, speed), grip) - loadAt(LOAD, speed);
    const steps = Array.from({ length: 20001 }, (_, i) => (i * 500) / turns / 20000);
    const searched = Math.max(...steps.map(spare));
    const best = bestOf(line, LOAD, grip);
    expect(best.spare).toBeGreaterThanOrEqual(searched - 1e-9);
    expect(best.spare).toBeLessThan(searched + 0.01);
    expect(spare(best.speed)).toBeCloseTo(best.spare, 9);
  });

  test('without any air it lies at a corner', () => {
    const line = createPullLine(DRIVE, 10);
    expect(bestOf(line, { ...LOAD, air: 0, rolling: 0 }).speed).toBe(30);
  });
});

describe('the top speed of a gear', () => {
  test('is where pull and road load meet', () => {
    const line = createPullLine(DRIVE, 6);
    const speed = topSpeedOf(line, LOAD);
    expect(pullAt(line, speed)).toBeCloseTo(loadAt(LOAD, speed), 9);
    expect(pullAt(line, speed + 0.01)).toBeLessThan(loadAt(LOAD, speed + 0.01));
  });

  test('is where the engine ends, in a gear with power to spare', () => {
    expect(topSpeedOf(createPullLine(DRIVE, 20), LOAD)).toBe(25);
  });

  test('is 0 in a gear that cannot hold the car at any speed', () => {
    expect(topSpeedOf(createPullLine(DRIVE, 0.2), LOAD)).toBe(0);
  });

  test('is found where the pull rises above the load and falls below it again between two points', () => {
    const flat = { ...DRIVE, speeds: Float64Array.of(1, 101), torques: Float64Array.of(0, 110) };
    const line = createPullLine({ ...flat, limit: 101 }, 1);
    const load = { rolling: 5, air: 0.012, doublesAt: 1e9 };
    const speed = topSpeedOf(line, load);
    expect(pullAt(line, 101)).toBeLessThan(loadAt(load, 101));
    expect(pullAt(line, speed)).toBeCloseTo(loadAt(load, speed), 9);
    expect(speed).toBeGreaterThan(50);
  });
});
