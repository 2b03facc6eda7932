import { describe, expect, test } from 'vitest';
import { loadAt, ROAD_LOAD, SPEED_ON_POWER } from '../../src/trade/road-load.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const MPH = 0.44704;

test('at a standstill only rolling resistance is left', () => {
  expect(loadAt({ rolling: 100, air: 0.5, doublesAt: 40 }, 0)).toBe(100);
});

test('the air takes four times as much at twice the speed', () => {
  const air = (speed: number) => loadAt({ rolling: 0, air: 0.5, doublesAt: 40 }, speed);
  expect(air(40) / air(20)).toBe(4);
});

test('a rolling resistance that never doubles is refused', () => {
  expect(refusalOf(ROAD_LOAD, 10, 100, 0.5, 0)).toBe(
    'rolling resistance doubles at a speed above 0',
  );
});

test('a speed beyond the figure for highways is warned of, in a list as well', () => {
  expect(ROAD_LOAD.outside!(70 * MPH, 100, 0.5, 44.8)).toBeUndefined();
  expect(ROAD_LOAD.outside!(151 * MPH, 100, 0.5, 44.8)).toMatch(/150 mph/);
  expect(ROAD_LOAD.outside!(Float64Array.of(1, 151 * MPH), 100, 0.5, 44.8)).toMatch(/150 mph/);
});

describe('the speed on a power', () => {
  test('uses that power up', () => {
    for (const power of [1, 1e3, 91e3, 1e6]) {
      const speed = runFunction(SPEED_ON_POWER, power, 142, 0.48) as number;
      const load = loadAt({ rolling: 142, air: 0.48, doublesAt: 147 * 0.3048 }, speed);
      expect((load * speed) / power).toBeCloseTo(1, 12);
    }
  });

  test('is 0 on no power', () => {
    expect(runFunction(SPEED_ON_POWER, 0, 142, 0.48)).toBeCloseTo(0, 12);
  });

  test.each<[string, number[], RegExp]>([
    ['a power below 0', [-1, 142, 0.48], /below 0 drives no car/],
    ['a drag below 0', [1, 142, -0.48], /must not be below 0/],
    ['a rolling resistance below 0', [1, -142, 0.48], /must not be below 0/],
    ['nothing that holds the car', [1, 0, 0], /no highest speed/],
  ])('%s is refused', (_, values, sentence) => {
    expect(refusalOf(SPEED_ON_POWER, ...values)).toMatch(sentence);
  });

  test('warns above 150 mph', () => {
    const warned = (power: number) => SPEED_ON_POWER.outside!(power, 142, 0.48, 44.8);
    expect(warned(91e3)).toBeUndefined();
    expect(warned(500e3)).toMatch(/150 mph/);
  });
});
