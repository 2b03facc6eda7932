import { describe, expect, test } from 'vitest';
import { numberCode, slotCode } from '../../src/language/code.ts';
import { compileCall, isThere } from '../../src/language/compile-call.ts';
import { BUILTINS } from '../../src/language/functions/builtins.ts';
import { createMemory } from '../../src/language/memory.ts';
import { NONE } from '../../src/units/dimension.ts';
import { makeFormula } from './made-formula.ts';

describe('whether a value is there', () => {
  test.each([
    [0, true],
    ['', true],
    [false, true],
    [new Float64Array(), true],
    [Float64Array.of(1, 2), true],
    [[], true],
    [undefined, false],
    [Number.NaN, false],
    [Number.POSITIVE_INFINITY, false],
    [Float64Array.of(1, Number.NaN), false],
    [Float64Array.of(Number.NEGATIVE_INFINITY), false],
  ])('%o: %s', (value, there) => {
    expect(isThere(value)).toBe(there);
  });
});

describe('functions of one, two and three values', () => {
  test.each([
    ['abs(-3)', 3],
    ['atan2(0, 1)', 0],
    ['max(3, 7)', 7],
    ['max(3, 7, 5)', 7],
    ['interpolate([0, 10], [0, 20], 5)', 10],
    ['round(2.26, step: 0.5)', 2.5],
  ])('%s is %d', (source, value) => {
    expect(makeFormula(source).value).toBe(value);
  });

  test('element by element, a number going with each', () => {
    expect(makeFormula('round([2.26, 7.9], 0.5)').value).toEqual(Float64Array.of(2.5, 8));
  });

  test.each([
    ['sqrt([4, -1])'],
    ['sqrt(-1)'],
    ['max(1, few / 0)'],
    ['atan2(few, three)'],
    ['first([])'],
    ['interpolate(few, few, 9)'],
    ['round(5, step: -1)'],
    ['round([5, 6], step: -1)'],
  ])('%s has no value', (source) => {
    const made = makeFormula(source, { few: '[1, 2]', three: '[1, 2, 3]' });
    expect(made.value).toBeUndefined();
    expect(made.problem).toBeDefined();
  });

  const ATAN2 = BUILTINS.find(({ name }) => name === 'atan2')!;
  const ANGLE = { type: 'quantity', dimension: NONE } as const;

  test('two numbers are the same from their places in the memory as from code', () => {
    const memory = createMemory(2);
    memory.numbers.set([3, 4]);
    const worked = (slot: number) => numberCode(({ numbers }) => numbers[slot]!);
    const pairs = [
      [slotCode(0), slotCode(1)],
      [slotCode(0), worked(1)],
      [worked(0), slotCode(1)],
      [worked(0), worked(1)],
    ];
    const values = pairs.map((codes) => compileCall(ATAN2, codes, ANGLE).run(memory));
    expect(values).toEqual(pairs.map(() => Math.atan2(3, 4)));
    memory.numbers[1] = Number.NaN;
    const missing = pairs.map((codes) => compileCall(ATAN2, codes, ANGLE).run(memory));
    expect(missing).toEqual(pairs.map(() => Number.NaN));
  });
});
