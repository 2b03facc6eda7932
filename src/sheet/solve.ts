import { isThere } from '../language/compile-call.ts';
import { explain } from '../language/explain.ts';
import type { Value } from '../language/kind.ts';
import { fail, type Problem } from '../language/problem.ts';
import type { Book } from './book.ts';
import type { Cell, Formula } from './cell.ts';
import type { Frame } from './frame.ts';
import type { Outcome } from './outcome.ts';
import { placeProblem } from './places.ts';

/** Works all cells of the book in order. Mutates the frame's memory. */
export function solve(book: Book, frame: Frame): void {
  for (const index of book.order) evaluate(book, frame, index);
}

/** Works one cell from those that it reads. Mutates the frame's memory. */
export function evaluate(book: Book, { memory }: Frame, index: number): void {
  const cell = book.cells[index]!;
  switch (cell.role) {
    case 'work':
    case 'stack': {
      const { formula } = cell;
      if (formula === undefined) return;
      const { code } = formula;
      if (code.type === 'number') {
        const value = code.run(memory);
        memory.numbers[index] = value - value === 0 ? value : Number.NaN;
      } else {
        const value = code.run(memory);
        memory.others[index] = isThere(value) ? value : undefined;
      }
      return;
    }
    case 'from':
      if (cell.origin === undefined) return;
      memory.numbers[index] = memory.numbers[cell.origin]!;
      memory.others[index] = memory.others[cell.origin];
      memory.blanks[index] = memory.blanks[cell.origin]!;
      return;
    case 'given':
    case 'table':
      return;
    default:
      cell satisfies never;
  }
}

/** The value of a cell as it stands in the memory, or undefined. */
export function valueOfCell({ index, kind }: Cell, { memory }: Frame): Value | undefined {
  if (kind === undefined) return undefined;
  if (kind.type !== 'quantity' && kind.type !== 'truth')
    return memory.others[index] as Value | undefined;
  const number = memory.numbers[index]!;
  if (Number.isNaN(number)) return undefined;
  return kind.type === 'truth' ? number === 1 : number;
}

/** What became of a cell after it was worked; why, where it has no value. */
export function outcomeOf(book: Book, frame: Frame, index: number): Outcome {
  const cell = book.cells[index]!;
  const value = valueOfCell(cell, frame);
  if (value !== undefined) return { state: 'value', value };
  if (frame.memory.blanks[index] === 1) return { state: 'blank' };
  const problem = cell.problem ?? problemOf(book, frame, cell);
  return { state: problem.code === 'waiting' ? 'waiting' : 'failed', problem };
}

function problemOf(book: Book, frame: Frame, cell: Cell): Problem {
  switch (cell.role) {
    case 'given':
    case 'table': {
      const reading = frame.readings[cell.index];
      return reading?.state === 'failed'
        ? reading.problem
        : fail('overflow', cell.statement, undefined);
    }
    case 'from':
      return waitForOrigin(book, frame, cell);
    case 'work':
    case 'stack':
      return explainCell(book, frame, cell, cell.formula!);
    default:
      return cell satisfies never;
  }
}

function waitForOrigin(book: Book, frame: Frame, cell: Extract<Cell, { role: 'from' }>): Problem {
  const origin = book.cells[cell.origin!]!;
  const why = whyNot(book, frame, origin.index);
  const waiting = fail('waiting', cell.statement, { name: origin.name, why });
  return { ...waiting, place: cell.place, cell: cell.name, waitsFor: origin.name };
}

/** Tells why a formula of this cell's sheet has no value. */
export function explainCell(
  book: Book,
  frame: Frame,
  { sheet, name }: Pick<Cell, 'sheet' | 'name'>,
  formula: Formula,
): Problem {
  const { places, source } = book.sheets.find((candidate) => candidate.name === sheet)!;
  const slotOf = (wanted: string) => book.find(sheet, wanted)!.index;
  const problem = explain(formula.tree, {
    functions: book.functions,
    kinds: formula.kinds,
    memory: frame.memory,
    source,
    slotOf,
    whyNot: (wanted) => whyNot(book, frame, slotOf(wanted)),
  });
  return placeProblem(problem, places, name);
}

/** Why a cell has no value, in words that follow "which". Names the cell at the root of it. */
function whyNot(book: Book, frame: Frame, index: number): string {
  const outcome = outcomeOf(book, frame, index);
  if (outcome.state === 'blank') return 'is blank';
  if (outcome.state === 'value') return 'has a value';
  if (outcome.state === 'failed') return 'has an error';
  return outcome.problem.message;
}
