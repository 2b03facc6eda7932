import { expect, test } from 'vitest';
import { atClock, formatClock } from '../../src/drawing/clock.ts';

const DEGREE = Math.PI / 180;

test.each([
  [0, '12:00'],
  [30, '1:00'],
  [128, '4:16'],
  [315, '10:30'],
  [359.9, '12:00'],
  [360, '12:00'],
  [-30, '11:00'],
  [750, '1:00'],
])('%d° is %s on the clock', (degrees, time) => {
  expect(formatClock(degrees * DEGREE)).toBe(time);
});

test.each([
  [0, [100, 90]],
  [90, [110, 100]],
  [180, [100, 110]],
  [270, [90, 100]],
])('%d° lies where a clock has it', (degrees, [x, y]) => {
  const found = atClock([100, 100], 10, degrees * DEGREE);
  expect(found[0]).toBeCloseTo(x!, 9);
  expect(found[1]).toBeCloseTo(y!, 9);
});
