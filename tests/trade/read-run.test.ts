import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  distanceAfter,
  speedAfter,
  timeOverDistance,
  timeToSpeed,
} from '../../src/trade/read-run.ts';
import type { Run } from '../../src/trade/run.ts';

/** 2 m/s² for 4 s, one second of rolling, then 1 m/s² for 5 s. */
const RUN: Run = {
  times: [0, 4, 5, 10],
  speeds: [0, 8, 8, 13],
  distances: [0, 16, 24, 76.5],
  starts: [0, 2, 0, 1],
  ends: [0, 2, 0, 1],
};

describe('between the points of the record', () => {
  test.each([
    [0, 0, 0],
    [1, 2, 1],
    [3, 6, 9],
    [4, 8, 16],
    [4.5, 8, 20],
    [7, 10, 42],
    [10, 13, 76.5],
  ])('after %d s the speed is %d m/s and the distance %d m', (time, speed, distance) => {
    expect(speedAfter(RUN, time)).toBeCloseTo(speed, 12);
    expect(distanceAfter(RUN, time)).toBeCloseTo(distance, 12);
  });

  test('past the end of the record its last figures stand', () => {
    expect(speedAfter(RUN, 11)).toBe(13);
    expect(distanceAfter(RUN, 11)).toBe(76.5);
  });
});

describe('asked the other way round', () => {
  test.each([
    [2, 1],
    [8, 4],
    [10, 7],
    [13, 10],
  ])('%d m/s is first reached after %d s', (speed, time) => {
    expect(timeToSpeed(RUN, speed)).toBeCloseTo(time, 9);
  });

  test.each([
    [9, 3],
    [20, 4.5],
    [42, 7],
  ])('%d m are covered after %d s', (distance, time) => {
    expect(timeOverDistance(RUN, distance)).toBeCloseTo(time, 9);
  });

  test('a standstill is there at once', () => {
    expect(timeToSpeed(RUN, 0)).toBe(0);
    expect(timeOverDistance(RUN, -1)).toBe(0);
  });

  test('what the record does not hold has no time', () => {
    expect(timeToSpeed(RUN, 13.1)).toBeUndefined();
    expect(timeOverDistance(RUN, 77)).toBeUndefined();
  });

  test('distance after the time over a distance is that distance', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 76.4, noNaN: true }), (distance) => {
        expect(distanceAfter(RUN, timeOverDistance(RUN, distance)!)).toBeCloseTo(distance, 9);
      }),
    );
  });
});

test('a stretch of no length is its end', () => {
  const jump: Run = {
    times: [0, 1, 1],
    speeds: [0, 2, 5],
    distances: [0, 1, 1],
    starts: [0, 2, 0],
    ends: [0, 2, 0],
  };
  expect(speedAfter(jump, 1)).toBe(5);
});
