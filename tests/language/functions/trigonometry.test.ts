import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { TRIGONOMETRY } from '../../../src/language/functions/trigonometry.ts';
import { refusalOf, runFunction } from '../../support/run-function.ts';

const find = (name: string) => TRIGONOMETRY.find((declaration) => declaration.name === name)!;
const run = (name: string, ...values: number[]) => runFunction(find(name), ...values) as number;
const degrees = (angle: number) => (angle * Math.PI) / 180;

test.each([
  ['sin', 0, 0],
  ['sin', 30, 0.5],
  ['sin', -90, -1],
  ['cos', 0, 1],
  ['cos', 60, 0.5],
  ['cos', 180, -1],
  ['tan', 45, 1],
  ['tan', -45, -1],
  ['tan', 180, 0],
])('%s of %d degrees is %d', (name, angle, value) => {
  expect(run(name, degrees(angle))).toBeCloseTo(value, 14);
});

test.each([
  ['asin', 1, 90],
  ['asin', -0.5, -30],
  ['acos', 1, 0],
  ['acos', -1, 180],
  ['atan', 1, 45],
  ['atan', -1e300, -90],
])('%s of %d is %d degrees', (name, ratio, angle) => {
  expect(run(name, ratio)).toBeCloseTo(degrees(angle), 14);
});

test.each([
  [0, 1, 0],
  [1, 0, 90],
  [0, -1, 180],
  [-1, 0, -90],
  [1, -1, 135],
  [-1, -1, -135],
  [0, 0, 0],
])('from a rise of %d over a run of %d a point lies at %d degrees', (rise, along, angle) => {
  expect(run('atan2', rise, along)).toBeCloseTo(degrees(angle), 14);
});

describe('what has no value', () => {
  test.each([
    ['tan', degrees(90), 'a right angle has no tangent'],
    ['tan', degrees(-90), 'a right angle has no tangent'],
    ['tan', degrees(270), 'a right angle has no tangent'],
    ['tan', degrees(90 + 360 * 1000), 'a right angle has no tangent'],
    ['asin', 1.0001, 'asin needs a number from -1 to 1'],
    ['acos', -2, 'acos needs a number from -1 to 1'],
  ])('%s of %d: %s', (name, x, sentence) => {
    expect(refusalOf(find(name), x)).toBe(sentence);
    const { work } = find(name);
    if (work.type === 'each') expect(work.run(x)).toBeNaN();
  });

  test('a hair beside a right angle there is a tangent', () => {
    expect(refusalOf(find('tan'), degrees(90) - 1e-9)).toBeUndefined();
  });
});

test('each function and its inverse undo each other', () => {
  const angle = fc.double({ min: -1.5, max: 1.5, noNaN: true });
  fc.assert(
    fc.property(angle, (x) => {
      expect(run('asin', run('sin', x))).toBeCloseTo(x, 6);
      expect(run('atan', run('tan', x))).toBeCloseTo(x, 9);
      expect(run('acos', run('cos', x))).toBeCloseTo(Math.abs(x), 6);
      expect(run('atan2', run('sin', x), run('cos', x))).toBeCloseTo(x, 12);
    }),
  );
});
