import { expect, test } from 'vitest';
import { describeShape } from '../../src/chart/line-shape.ts';
import { sample } from '../support/chart-cases.ts';

const Y = [0, 100] as const;

test.each([
  ['rises', (x: number) => 10 * x],
  ['falls', (x: number) => 100 - x ** 2],
  ['level', () => 50],
  ['level', (x: number) => 50 + 0.1 * Math.sin(20 * x)],
  ['peak', (x: number) => 100 - (x - 4) ** 2],
  ['dip', (x: number) => (x - 4) ** 2],
  ['to and fro', (x: number) => 50 + 40 * Math.sin(2 * x)],
  ['nothing', () => Number.NaN],
] as const)('a line %s', (course, f) => {
  expect(describeShape(sample(f, 0, 10), Y).course).toBe(course);
});

test('the ends, the lowest and the highest point are told', () => {
  const shape = describeShape(
    [
      [0, 5],
      [1, 9],
      [2, Number.NaN],
      [3, 1],
      [4, 2],
    ],
    Y,
  );
  expect(shape).toMatchObject({ first: [0, 5], last: [4, 2], lowest: [3, 1], highest: [1, 9] });
});
