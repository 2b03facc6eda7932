import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { NumberCode } from '../../src/language/code.ts';
import { createMemory } from '../../src/language/memory.ts';
import { operateOnNumbers } from '../../src/language/number-operators.ts';
import { divide, raise } from '../../src/language/safe-operators.ts';
import type { ArithmeticOperator } from '../../src/language/tree.ts';

const WORK: Readonly<Record<ArithmeticOperator, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': divide,
  '^': raise,
};
const OPERATORS = Object.keys(WORK) as ArithmeticOperator[];

/** A number at a place of the memory; code that reads it there by itself would show in the count. */
function held(slot: number): NumberCode {
  return { type: 'number', slot, run: () => expect.unreachable('read through its own code') };
}

function worked(value: number): NumberCode {
  return { type: 'number', run: () => value };
}

function memoryOf(...numbers: readonly number[]) {
  const memory = createMemory(numbers.length);
  memory.numbers.set(numbers);
  return memory;
}

describe.each(OPERATORS)('%s', (operator) => {
  test('gives the same however its sides stand, in the order in which they stand', () => {
    const any = fc.double();
    fc.assert(
      fc.property(any, any, (a, b) => {
        const memory = memoryOf(a, b);
        const forms = [
          operateOnNumbers(operator, held(0), held(1)),
          operateOnNumbers(operator, held(0), worked(b)),
          operateOnNumbers(operator, worked(a), held(1)),
          operateOnNumbers(operator, worked(a), worked(b)),
        ];
        const value = WORK[operator](a, b);
        expect(forms.map((run) => run(memory))).toEqual([value, value, value, value]);
      }),
    );
  });

  test('takes both sides from one place', () => {
    const run = operateOnNumbers(operator, held(0), held(0));
    expect(run(memoryOf(3))).toBe(WORK[operator](3, 3));
  });

  test('reads the memory at each run', () => {
    const run = operateOnNumbers(operator, held(0), worked(2));
    expect([run(memoryOf(6)), run(memoryOf(8))]).toEqual([
      WORK[operator](6, 2),
      WORK[operator](8, 2),
    ]);
  });
});
