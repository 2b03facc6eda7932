import { expect, test } from 'vitest';
import { arrowhead, hatch, line, polygon } from '../../src/drawing/shapes.ts';

test.each([
  ['right', 'M100 50L91 53L91 47Z'],
  ['left', 'M100 50L109 47L109 53Z'],
  ['down', 'M100 50L97 41L103 41Z'],
  ['up', 'M100 50L103 59L97 59Z'],
] as const)('an arrowhead that points %s has its tip at the point', (heading, path) => {
  expect(arrowhead(100, 50, heading)).toBe(path);
});

test('paths are written in px to a hundredth', () => {
  expect(line(0, 1 / 3, 10, 0)).toBe('M0 0.33L10 0');
  expect(
    polygon([
      [0, 0],
      [1, 0],
      [1, 1],
    ]),
  ).toBe('M0 0L1 0L1 1Z');
});

test('hatching stays inside its rectangle and runs at 45 degrees', () => {
  const numbers = [...hatch({ x: 20, y: 30, width: 50, height: 20 }).matchAll(/-?[\d.]+/g)].map(
    Number,
  );
  expect(numbers.length).toBeGreaterThan(0);
  for (let i = 0; i < numbers.length; i += 4) {
    const [x1, y1, x2, y2] = numbers.slice(i, i + 4) as [number, number, number, number];
    expect(Math.min(x1, x2)).toBeGreaterThanOrEqual(20);
    expect(Math.max(x1, x2)).toBeLessThanOrEqual(70);
    expect(Math.min(y1, y2)).toBeGreaterThanOrEqual(30);
    expect(Math.max(y1, y2)).toBeLessThanOrEqual(50);
    expect(x2 - x1).toBeCloseTo(y1 - y2, 1);
  }
});

test('an empty rectangle has no hatching', () => {
  expect(hatch({ x: 0, y: 0, width: 0, height: 20 })).toBe('');
  expect(hatch({ x: 0, y: 0, width: -5, height: 20 })).toBe('');
});
