import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ARITHMETIC } from '../../../src/language/functions/arithmetic.ts';
import { refusalOf, runFunction } from '../../support/run-function.ts';

const find = (name: string) => ARITHMETIC.find((declaration) => declaration.name === name)!;
const run = (name: string, ...values: number[]) => runFunction(find(name), ...values) as number;

describe('a function of one number', () => {
  test.each([
    ['abs', -3, 3],
    ['abs', 0, 0],
    ['sqrt', 9, 3],
    ['sqrt', 0, 0],
    ['exp', 0, 1],
    ['exp', 1, Math.E],
    ['ln', 1, 0],
    ['ln', Math.E, 1],
  ])('%s of %d is %d', (name, x, y) => {
    expect(run(name, x)).toBeCloseTo(y, 14);
  });
});

describe('what has no value', () => {
  test.each([
    ['sqrt', [-1], 'the square root of a negative is not a real number'],
    ['ln', [0], 'only numbers above 0 have a logarithm'],
    ['ln', [-1], 'only numbers above 0 have a logarithm'],
    ['round', [1, 0], 'the step must be above 0'],
    ['ceil', [1, -1], 'the step must be above 0'],
    ['floor', [1, Number.NaN], 'the step must be above 0'],
  ])('%s of %j: %s', (name, values, sentence) => {
    expect(refusalOf(find(name), ...values)).toBe(sentence);
  });
});

describe('rounding to a step', () => {
  test.each([
    [2.5, 1, 3, 3, 2],
    [-2.5, 1, -3, -2, -3],
    [0.5, 1, 1, 1, 0],
    [-0.5, 1, -1, -0, -1],
    [2.4, 1, 2, 3, 2],
    [0, 1, 0, 0, 0],
    [7, 2, 8, 8, 6],
    [0.3, 0.1, 0.3, 0.3, 0.3],
    [1.005, 0.01, 1.01, 1.01, 1],
    [-0.3, 0.1, -0.3, -0.3, -0.3],
  ])('%d by %d: round %d, ceil %d, floor %d', (x, step, round, ceil, floor) => {
    expect([run('round', x, step), run('ceil', x, step), run('floor', x, step)]).toEqual([
      expect.closeTo(round, 12),
      expect.closeTo(ceil, 12),
      expect.closeTo(floor, 12),
    ]);
  });

  test('a step that is left out is 1', () => {
    expect([run('round', 2.6), run('ceil', 2.1), run('floor', 2.9)]).toEqual([3, 3, 2]);
  });

  test('the rounded number lies within its step, and rounding it again leaves it', () => {
    const x = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    const step = fc.constantFrom(1, 0.5, 0.1, 0.001, 1 / 64, 0.0254, 3);
    fc.assert(
      fc.property(x, step, (value, by) => {
        const hair = 1e-9 * (1 + Math.abs(value));
        const [near, up, down] = ['round', 'ceil', 'floor'].map((name) => run(name, value, by));
        expect(Math.abs(near! - value)).toBeLessThanOrEqual(by / 2 + hair);
        expect(up! - value).toBeGreaterThanOrEqual(-hair);
        expect(up! - value).toBeLessThan(by + hair);
        expect(value - down!).toBeGreaterThanOrEqual(-hair);
        expect(value - down!).toBeLessThan(by + hair);
        for (const [i, name] of ['round', 'ceil', 'floor'].entries()) {
          const once = [near!, up!, down!][i]!;
          expect(run(name, once, by)).toBeCloseTo(once, 9);
        }
      }),
    );
  });
});
