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
