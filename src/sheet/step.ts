import type { Code } from '../language/code.ts';
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
  if (code.type === 'number') {
    const { run } = code;
    return (memory) => {
      const value = run(memory);
      memory.numbers[index] = value - value === 0 ? value : Number.NaN;
    };
  }
  if (code.type === 'list') {
    const { run } = code;
    return (memory) => {
      const list = run(memory);
      memory.others[index] = list !== undefined && isWhole(list) ? list : undefined;
    };
  }
  const { run } = code;
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
