import { type Code, type ListRun, numberCode } from './code.ts';
import { compileElements, negateElements } from './compile-elements.ts';
import { operateOnNumbers } from './number-operators.ts';
import type { ArithmeticOperator } from './tree.ts';

/** Code for one arithmetic operator; lists are worked element by element. */
export function compileArithmetic(operator: ArithmeticOperator, left: Code, right: Code): Code {
  if (left.type === 'number' && right.type === 'number') {
    return numberCode(operateOnNumbers(operator, left, right));
  }
  return compileElements(operator, left, right);
}

export function compileNegation(operand: Code): Code {
  if (operand.type !== 'number') return negateElements(operand.run as ListRun);
  const { run } = operand;
  return numberCode((memory) => -run(memory));
}
