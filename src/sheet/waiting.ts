import type { Problem } from '../language/problem.ts';
import type { Cell } from './cell.ts';

/**
 * Follows the cells that wait to the one at the root: the one that is blank or wrong itself. Goes
 * step by step, so that a long chain is no trouble.
 *
 * @param problemOf why a cell has no value; undefined where it has one or is blank
 */
export function findRoot(
  cells: readonly Cell[],
  start: number,
  problemOf: (index: number) => Problem | undefined,
): Cell {
  let at = cells[start]!;
  for (let next = nextOf(cells, at, problemOf); next !== undefined; ) {
    at = next;
    next = nextOf(cells, at, problemOf);
  }
  return at;
}

/** A cell that is broken stays so: its root is looked for once, and a chain of them costs no more. */
const ROOTS = new WeakMap<Cell, Cell>();

/** Why a cell that can never be worked has no value, in words that follow "which". */
export function whyBroken(cells: readonly Cell[], index: number): string {
  const cell = cells[index]!;
  const problemOf = (at: number) => cells[at]!.problem;
  const next = nextOf(cells, cell, problemOf);
  const known = next === undefined ? cell : ROOTS.get(next);
  const root = known ?? findRoot(cells, index, problemOf);
  ROOTS.set(cell, root);
  return describeWaiting(cell, root, 'has an error');
}

function nextOf(
  cells: readonly Cell[],
  { index, inputs }: Cell,
  problemOf: (index: number) => Problem | undefined,
): Cell | undefined {
  const problem = problemOf(index);
  if (problem?.code !== 'waiting') return undefined;
  const next = inputs.find((input) => cells[input]!.name === problem.waitsFor);
  return next === undefined ? undefined : cells[next];
}

/**
 * Why a cell has no value, in words that follow "which": what ails it, or the cell at the root.
 *
 * @param why what ails the root: "is blank"
 */
export function describeWaiting({ sheet, index }: Cell, root: Cell, why: string): string {
  if (root.index === index) return why;
  const name = root.sheet === sheet ? root.name : `${root.sheet}: ${root.name}`;
  return `waits for ${name}, which ${why}`;
}
