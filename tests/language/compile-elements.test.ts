import { describe, expect, test } from 'vitest';
import { type ListRun, listCode, numberCode, slotCode } from '../../src/language/code.ts';
import { compileElements, negateElements } from '../../src/language/compile-elements.ts';
import { createMemory } from '../../src/language/memory.ts';
import type { ArithmeticOperator } from '../../src/language/tree.ts';

const MEMORY = createMemory(0);
const number = (x: number) => numberCode(() => x);
const held = (list: Float64Array | undefined) => listCode(() => list);
const fresh = (...numbers: number[]) => listCode(() => Float64Array.from(numbers), true);

function run(operator: ArithmeticOperator, left: ReturnType<typeof number>, right: typeof left) {
  const code = compileElements(operator, left, right);
  return (code.run as ListRun)(MEMORY);
}

describe('an operator on lists', () => {
  test.each([
    ['+', [11, 22, 34]],
    ['-', [9, 18, 26]],
    ['*', [10, 40, 120]],
    ['/', [10, 10, 7.5]],
    ['^', [10, 400, 810000]],
  ] as const)('%s works them element by element', (operator, expected) => {
    const [a, b] = [Float64Array.of(10, 20, 30), Float64Array.of(1, 2, 4)];
    expect(run(operator, held(a), held(b))).toEqual(Float64Array.from(expected));
  });

  test('takes a number on either side', () => {
    const list = Float64Array.of(1, 2, 4);
    expect(run('-', number(10), held(list))).toEqual(Float64Array.of(9, 8, 6));
    expect(run('-', held(list), number(10))).toEqual(Float64Array.of(-9, -8, -6));
    expect(run('/', number(8), held(list))).toEqual(Float64Array.of(8, 4, 2));
  });

  test('takes a number from its place in the memory, at each run', () => {
    const memory = createMemory(1);
    const { run } = compileElements('-', slotCode(0), held(Float64Array.of(1, 2)));
    expect(run(memory)).toBeUndefined();
    memory.numbers[0] = 10;
    expect(run(memory)).toEqual(Float64Array.of(9, 8));
    memory.numbers[0] = 5;
    expect(run(memory)).toEqual(Float64Array.of(4, 3));
  });

  test('leaves a gap where one element has no value', () => {
    expect(run('/', number(1), held(Float64Array.of(1, 0)))).toEqual(
      Float64Array.of(1, Number.NaN),
    );
  });

  test('has no value for lists of unequal length, nor where a side has none', () => {
    expect(run('+', fresh(1, 2), fresh(1, 2, 3))).toBeUndefined();
    expect(run('+', held(undefined), fresh(1))).toBeUndefined();
    expect(run('+', number(1), held(undefined))).toBeUndefined();
  });

  test('gives an empty list for an empty list', () => {
    expect(run('+', number(1), fresh())).toEqual(new Float64Array());
  });
});

describe('lists that others hold', () => {
  test('are never written into', () => {
    const [a, b] = [Float64Array.of(1, 2), Float64Array.of(3, 4)];
    const sum = run('+', held(a), held(b));
    expect([a, b]).toEqual([Float64Array.of(1, 2), Float64Array.of(3, 4)]);
    expect(sum).not.toBe(a);
    expect(run('*', fresh(5, 6), held(b))).toEqual(Float64Array.of(15, 24));
    expect(run('*', held(b), fresh(5, 6))).toEqual(Float64Array.of(15, 24));
    expect(b).toEqual(Float64Array.of(3, 4));
  });

  test('stay as they are under a sign', () => {
    const list = Float64Array.of(1, -2);
    expect((negateElements(() => list).run as ListRun)(MEMORY)).toEqual(Float64Array.of(-1, 2));
    expect(list).toEqual(Float64Array.of(1, -2));
    expect((negateElements(() => undefined).run as ListRun)(MEMORY)).toBeUndefined();
  });
});
