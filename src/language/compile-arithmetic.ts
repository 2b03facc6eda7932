import { type Code, type ListRun, type NumberRun, numberCode } from './code.ts';
import { compileElements, negateElements } from './compile-elements.ts';
import { divide, raise } from './safe-operators.ts';
import type { ArithmeticOperator } from './tree.ts';

const ON_NUMBERS: Readonly<Record<ArithmeticOperator, (a: NumberRun, b: NumberRun) => NumberRun>> =
  {
    '+': (a, b) => (memory) => a(memory) + b(memory),
    '-': (a, b) => (memory) => a(memory) - b(memory),
    '*': (a, b) => (memory) => a(memory) * b(memory),
    '/': (a, b) => (memory) => divide(a(memory), b(memory)),
    '^': (a, b) => (memory) => raise(a(memory), b(memory)),
  };

/** Code for one arithmetic operator; lists are worked element by element. */
export function compileArithmetic(operator: ArithmeticOperator, left: Code, right: Code): Code {
  if (left.type === 'number' && right.type === 'number') {
    return numberCode(ON_NUMBERS[operator](left.run, right.run));
  }
  return compileElements(operator, left, right);
}

export function compileNegation(operand: Code): Code {
  if (operand.type !== 'number') return negateElements(operand.run as ListRun);
  const { run } = operand;
  return numberCode((memory) => -run(memory));
}
