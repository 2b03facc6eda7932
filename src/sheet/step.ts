import type { Code, ListRun, NumberRun, OtherRun } from '../language/code.ts';
import { isWhole } from '../language/compile-call.ts';
import type { Memory } from '../language/memory.ts';
import type { Cell, Formula } from './cell.ts';

/** Works one cell from those that it reads. Mutates the memory. */
export type Step = (memory: Memory) => void;

/**
 * All that working a cell takes, apart from the cell: of thousands of cells, those that are worked
 * again and again must not drag their labels and trees along.
 */
export function createStep(
  cell: Cell,
  compile: (formula: Formula) => Code = ({ code }) => code,
): Step {
  switch (cell.role) {
    case 'work':
    case 'stack':
      return cell.formula === undefined
        ? rest
        : createFormulaStep(cell.index, compile(cell.formula));
    case 'from':
      return cell.origin === undefined ? rest : createCarry(cell.index, cell.origin);
    case 'given':
    case 'table':
      return rest;
    default:
      return cell satisfies never;
  }
}

/** Nothing to work. */
export function rest(): void {}

function createFormulaStep(index: number, code: Code): Step {
  switch (code.type) {
    case 'number':
      return numberStep(index, code.run);
    case 'list':
      return listStep(index, code.run);
    case 'other':
      return otherStep(index, code.run);
    default:
      return code satisfies never;
  }
}

// Each in a function of its own, so that a step holds what it needs and nothing else: thousands of them
// are walked through again and again, and what lies between them must be fetched as well.

function numberStep(index: number, run: NumberRun): Step {
  return (memory) => {
    const value = run(memory);
    memory.numbers[index] = value - value === 0 ? value : Number.NaN;
  };
}

function listStep(index: number, run: ListRun): Step {
  return (memory) => {
    const list = run(memory);
    memory.others[index] = list !== undefined && isWhole(list) ? list : undefined;
  };
}

function otherStep(index: number, run: OtherRun): Step {
  return (memory) => {
    memory.others[index] = run(memory);
  };
}

function createCarry(index: number, origin: number): Step {
  return ({ numbers, others, blanks }) => {
    numbers[index] = numbers[origin]!;
    others[index] = others[origin];
    blanks[index] = blanks[origin]!;
  };
}
