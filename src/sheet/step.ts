import type { Code, ListRun, NumberRun, OtherRun } from '../language/code.ts';
import { isWhole } from '../language/compile-call.ts';
import type { Memory } from '../language/memory.ts';
import type { Cell, Formula } from './cell.ts';

const REST = 0;
const NUMBER = 1;
const LIST = 2;
const OTHER = 3;
const CARRY = 4;

type Run = NumberRun | ListRun | OtherRun;

/**
 * How to work each cell from those that it reads: all that it takes, apart from the cell. Thousands of
 * cells are worked again and again, and whatever lies between them the machine must fetch as well: so
 * neither labels and trees are dragged along nor code for what a byte can tell.
 */
export interface Steps {
  /** By cell what is done: nothing, to run its code and keep what that gives, or to carry a value. */
  readonly deeds: Uint8Array;
  /** By cell the code that is run. */
  readonly runs: readonly Run[];
  /** By cell the one whose value is carried. */
  readonly origins: Uint32Array;
}

/**
 * @param order the cells to be worked; what follows one another here comes to lie together
 * @param compile gives the code of a formula; its own where it is left out
 */
export function createSteps(
  cells: readonly Cell[],
  order: readonly number[],
  compile: (formula: Formula, cell: Cell) => Code = ({ code }) => code,
): Steps {
  const deeds = new Uint8Array(cells.length);
  const runs: Run[] = new Array<Run>(cells.length).fill(giveNothing);
  const origins = new Uint32Array(cells.length);
  for (const index of order) {
    const cell = cells[index]!;
    if (cell.role === 'from' && cell.origin !== undefined) {
      deeds[index] = CARRY;
      origins[index] = cell.origin;
    } else if ((cell.role === 'work' || cell.role === 'stack') && cell.formula !== undefined) {
      const { type, run } = compile(cell.formula, cell);
      deeds[index] = DEEDS[type];
      runs[index] = run;
    }
  }
  return { deeds, runs, origins };
}

const DEEDS: Readonly<Record<Code['type'], number>> = { number: NUMBER, list: LIST, other: OTHER };

function giveNothing(): undefined {}

/** Works one cell from those that it reads. Mutates the memory. */
export function workCell({ deeds, runs, origins }: Steps, memory: Memory, index: number): void {
  const { numbers, others, blanks } = memory;
  switch (deeds[index]) {
    case REST:
      break;
    case NUMBER: {
      const value = (runs[index] as NumberRun)(memory);
      numbers[index] = value - value === 0 ? value : Number.NaN;
      break;
    }
    case LIST: {
      const list = (runs[index] as ListRun)(memory);
      others[index] = list !== undefined && isWhole(list) ? list : undefined;
      break;
    }
    case OTHER:
      others[index] = (runs[index] as OtherRun)(memory);
      break;
    case CARRY: {
      const origin = origins[index]!;
      numbers[index] = numbers[origin]!;
      others[index] = others[origin];
      blanks[index] = blanks[origin]!;
      break;
    }
  }
}
