import { describe, expect, test } from 'vitest';
import {
  closingSpeed,
  createPullLine,
  type Drive,
  lastSpeed,
  pullAt,
} from '../../src/trade/pull-line.ts';

const CLUTCH: Drive = {
  speeds: Float64Array.from([100, 300, 500]),
  torques: Float64Array.from([120, 200, 160]),
  limit: 500,
  launchSpeed: 0,
  multiplication: 1,
  slip: 0,
};
const CONVERTER: Drive = { ...CLUTCH, launchSpeed: 200, multiplication: 2, slip: 0.05 };

describe('behind a clutch', () => {
  const line = createPullLine(CLUTCH, 10);

  test('the torque curve is stretched along the road', () => {
    expect(pullAt(line, 10)).toBe(1200);
    expect(pullAt(line, 20)).toBeCloseTo(1600, 12);
    expect(pullAt(line, 30)).toBe(2000);
    expect(lastSpeed(line)).toBe(50);
  });

  test('pull and speed trade places from gear to gear', () => {
    const tall = createPullLine(CLUTCH, 5);
    expect(pullAt(tall, 60)).toBe(pullAt(line, 30) / 2);
  });

  test('below the lowest speed of the curve the clutch slips and the pull is level', () => {
    expect(pullAt(line, 0)).toBe(1200);
    expect(pullAt(line, 5)).toBe(1200);
  });

  test('a launch speed is held until the road has caught up', () => {
    const launched = createPullLine({ ...CLUTCH, launchSpeed: 300 }, 10);
    expect(closingSpeed(launched)).toBe(30);
    expect(pullAt(launched, 0)).toBe(2000);
    expect(pullAt(launched, 29)).toBe(2000);
  });

  test('the line ends at the limit, between two points of the curve as well', () => {
    const limited = createPullLine({ ...CLUTCH, limit: 400 }, 10);
    expect(lastSpeed(limited)).toBe(40);
    expect(pullAt(limited, 40)).toBe(1800);
  });

  test('it ends with the curve where the limit lies beyond', () => {
    expect(lastSpeed(createPullLine({ ...CLUTCH, limit: 900 }, 10))).toBe(50);
  });

  test('a curve of one point pulls the same everywhere', () => {
    const single = { ...CLUTCH, speeds: Float64Array.of(300), torques: Float64Array.of(200) };
    const line = createPullLine(single, 10);
    expect([0, 10, 30].map((speed) => pullAt(line, speed))).toEqual([2000, 2000, 2000]);
    expect(lastSpeed(line)).toBe(30);
  });
});

describe('behind a converter', () => {
  const line = createPullLine(CONVERTER, 10);

  test('the torque is multiplied at a standstill', () => {
    expect(pullAt(line, 0)).toBe(2 * 160 * 10);
  });

  test('the multiple has fallen to half of its excess half-way to coupling', () => {
    expect(pullAt(line, 9.5)).toBeCloseTo(1.5 * 160 * 10, 9);
  });

  test('coupled, it slips: the engine runs ahead of the road', () => {
    expect(pullAt(line, 19)).toBeCloseTo(160 * 10, 9);
    expect(pullAt(line, 0.95 * 30)).toBeCloseTo(200 * 10, 9);
    expect(lastSpeed(line)).toBeCloseTo(0.95 * 50, 12);
  });

  test('never gives out more power than it takes in', () => {
    const steep = createPullLine({ ...CONVERTER, multiplication: 2.5 }, 10);
    const into = 160 * 200;
    for (let speed = 0; speed < 19; speed += 0.1) {
      expect(pullAt(steep, speed) * speed).toBeLessThanOrEqual(into);
    }
  });
});
