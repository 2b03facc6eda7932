import { explain } from '../language/explain.ts';
import type { Value } from '../language/kind.ts';
import { fail, type Problem } from '../language/problem.ts';
import type { Book } from './book.ts';
import type { Cell, Formula } from './cell.ts';
import type { Frame } from './frame.ts';
import type { Outcome } from './outcome.ts';
import { placeProblem } from './places.ts';
import { workCell } from './step.ts';
import { describeWaiting, findRoot } from './waiting.ts';

/**
 * Works these cells, each from those that it reads; all cells of the book where none are named.
 * Mutates the frame's memory.
 *
 * @param order such that each comes after those it reads
 */
export function solve(
  { order: whole, steps }: Book,
  { memory }: Frame,
  order: readonly number[] = whole,
): void {
  for (let i = 0; i < order.length; i += 1) workCell(steps, memory, order[i]!);
}

/** Works one cell from those that it reads. Mutates the frame's memory. */
export function evaluate({ steps }: Book, { memory }: Frame, index: number): void {
  workCell(steps, memory, index);
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
  return waiting(cell, origin, whyNot(book, frame, origin.index));
}

function waiting(cell: Cell, origin: Cell, why: string): Problem {
  const problem = fail('waiting', cell.statement, { name: `${origin.sheet}: ${origin.name}`, why });
  return { ...problem, place: cell.place, cell: cell.name, waitsFor: origin.name };
}

/** Tells why a formula of this cell's sheet has no value. */
export function explainCell(
  book: Book,
  frame: Frame,
  cell: Pick<Cell, 'sheet' | 'name'>,
  formula: Formula,
): Problem {
  return explainFormula(book, frame, cell, formula, (index) => whyNot(book, frame, index));
}

function explainFormula(
  book: Book,
  frame: Frame,
  { sheet, name }: Pick<Cell, 'sheet' | 'name'>,
  formula: Formula,
  why: (index: number) => string,
): Problem {
  const { places, source } = book.sheets.find((candidate) => candidate.name === sheet)!;
  const slotOf = (wanted: string) => book.find(sheet, wanted)!.index;
  const problem = explain(formula.tree, {
    functions: book.functions,
    kinds: formula.kinds,
    memory: frame.memory,
    source,
    slotOf,
    whyNot: (wanted) => why(slotOf(wanted)),
  });
  return placeProblem(problem, places, name);
}

/** Why a cell has no value, in words that follow "which". Names the cell at the root of it. */
function whyNot(book: Book, frame: Frame, index: number): string {
  const root = findRoot(book.cells, index, (at) => ownProblem(book, frame, at));
  const blank = frame.memory.blanks[root.index] === 1;
  return describeWaiting(book.cells[index]!, root, blank ? 'is blank' : 'has an error');
}

/** What ails a cell, told without looking further up: which cell it waits for, but not why. */
function ownProblem(book: Book, frame: Frame, index: number): Problem | undefined {
  const cell = book.cells[index]!;
  if (frame.memory.blanks[index] === 1) return undefined;
  if (cell.problem !== undefined) return cell.problem;
  if (cell.role === 'from') return waiting(cell, book.cells[cell.origin!]!, '');
  if (cell.role !== 'work' && cell.role !== 'stack') return undefined;
  return explainFormula(book, frame, cell, cell.formula!, () => '');
}
