import type { NumberCode, NumberRun } from './code.ts';
import { divide, raise } from './safe-operators.ts';
import type { ArithmeticOperator } from './tree.ts';

/**
 * One operator on two numbers, once for each way in which its sides can stand: `slot` at a place of
 * the memory, `run` as the outcome of other code. To read a place at once, and not through code of
 * its own, halves the time of most formulas.
 */
interface Forms {
  readonly slotSlot: (p: number, q: number) => NumberRun;
  readonly slotRun: (p: number, b: NumberRun) => NumberRun;
  readonly runSlot: (a: NumberRun, q: number) => NumberRun;
  readonly runRun: (a: NumberRun, b: NumberRun) => NumberRun;
}

const FORMS: Readonly<Record<ArithmeticOperator, Forms>> = {
  '+': {
    slotSlot: (p, q) => (memory) => memory.numbers[p]! + memory.numbers[q]!,
    slotRun: (p, b) => (memory) => memory.numbers[p]! + b(memory),
    runSlot: (a, q) => (memory) => a(memory) + memory.numbers[q]!,
    runRun: (a, b) => (memory) => a(memory) + b(memory),
  },
  '-': {
    slotSlot: (p, q) => (memory) => memory.numbers[p]! - memory.numbers[q]!,
    slotRun: (p, b) => (memory) => memory.numbers[p]! - b(memory),
    runSlot: (a, q) => (memory) => a(memory) - memory.numbers[q]!,
    runRun: (a, b) => (memory) => a(memory) - b(memory),
  },
  '*': {
    slotSlot: (p, q) => (memory) => memory.numbers[p]! * memory.numbers[q]!,
    slotRun: (p, b) => (memory) => memory.numbers[p]! * b(memory),
    runSlot: (a, q) => (memory) => a(memory) * memory.numbers[q]!,
    runRun: (a, b) => (memory) => a(memory) * b(memory),
  },
  '/': {
    slotSlot: (p, q) => (memory) => divide(memory.numbers[p]!, memory.numbers[q]!),
    slotRun: (p, b) => (memory) => divide(memory.numbers[p]!, b(memory)),
    runSlot: (a, q) => (memory) => divide(a(memory), memory.numbers[q]!),
    runRun: (a, b) => (memory) => divide(a(memory), b(memory)),
  },
  '^': {
    slotSlot: (p, q) => (memory) => raise(memory.numbers[p]!, memory.numbers[q]!),
    slotRun: (p, b) => (memory) => raise(memory.numbers[p]!, b(memory)),
    runSlot: (a, q) => (memory) => raise(a(memory), memory.numbers[q]!),
    runRun: (a, b) => (memory) => raise(a(memory), b(memory)),
  },
};

/** Code for one operator on two numbers. */
export function operateOnNumbers(
  operator: ArithmeticOperator,
  { slot: p, run: a }: NumberCode,
  { slot: q, run: b }: NumberCode,
): NumberRun {
  const { slotSlot, slotRun, runSlot, runRun } = FORMS[operator];
  if (p !== undefined) return q === undefined ? slotRun(p, b) : slotSlot(p, q);
  return q === undefined ? runRun(a, b) : runSlot(a, q);
}
