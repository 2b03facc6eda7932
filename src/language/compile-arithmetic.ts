import { type Code, type ListRun, listCode, type NumberRun, numberCode } from './code.ts';
import type { QuantityList } from './kind.ts';
import type { ArithmeticOperator } from './tree.ts';

/** Division and power give NaN where they have no value, so that nothing after them can hide it. */
export function divide(a: number, b: number): number {
  return b === 0 || b - b !== 0 ? Number.NaN : a / b;
}

/** A power may hide what it is made of: NaN^0 is 1 and ∞^-1 is 0 to the machine. */
export function raise(base: number, exponent: number): number {
  const x = base ** exponent;
  return x - x === 0 && base - base === 0 ? x : Number.NaN;
}

const ON_NUMBERS: Readonly<Record<ArithmeticOperator, (a: NumberRun, b: NumberRun) => NumberRun>> =
  {
    '+': (a, b) => (memory) => a(memory) + b(memory),
    '-': (a, b) => (memory) => a(memory) - b(memory),
    '*': (a, b) => (memory) => a(memory) * b(memory),
    '/': (a, b) => (memory) => divide(a(memory), b(memory)),
    '^': (a, b) => (memory) => raise(a(memory), b(memory)),
  };

const ON_ELEMENTS: Readonly<Record<ArithmeticOperator, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': divide,
  '^': raise,
};

/** Code for one arithmetic operator; lists are worked element by element. */
export function compileArithmetic(operator: ArithmeticOperator, left: Code, right: Code): Code {
  if (left.type === 'number' && right.type === 'number') {
    return numberCode(ON_NUMBERS[operator](left.run, right.run));
  }
  return listCode(compileElements(ON_ELEMENTS[operator], left, right));
}

export function compileNegation(operand: Code): Code {
  if (operand.type === 'number') {
    const { run } = operand;
    return numberCode((memory) => -run(memory));
  }
  const run = operand.run as ListRun;
  return listCode((memory) => run(memory)?.map((x) => -x));
}

/** Lists of unequal length have no value; why is told when it is asked for. */
function compileElements(work: (a: number, b: number) => number, left: Code, right: Code): ListRun {
  if (left.type === 'number') {
    const [a, b] = [left.run, right.run as ListRun];
    return (memory) => {
      const x = a(memory);
      return b(memory)?.map((y) => work(x, y));
    };
  }
  if (right.type === 'number') {
    const [a, b] = [left.run as ListRun, right.run];
    return (memory) => {
      const y = b(memory);
      return a(memory)?.map((x) => work(x, y));
    };
  }
  const [a, b] = [left.run as ListRun, right.run as ListRun];
  return (memory) => pairwise(work, a(memory), b(memory));
}

function pairwise(
  work: (a: number, b: number) => number,
  a: QuantityList | undefined,
  b: QuantityList | undefined,
): QuantityList | undefined {
  if (a === undefined || b === undefined || a.length !== b.length) return undefined;
  return a.map((x, i) => work(x, b[i]!));
}
