import type { Cell } from '../sheet/cell.ts';
import type { Outcome } from '../sheet/outcome.ts';
import { type Desk, findCell } from './desk.ts';
import { h } from './element.ts';
import { sheetHref } from './link.ts';

/** Why a cell has no value, for the place where its value would stand; undefined where it has one. */
export function createTrouble(desk: Desk, cell: Cell): HTMLElement | undefined {
  const outcome = desk.outcomeOf(cell.index);
  switch (outcome.state) {
    case 'value':
      return undefined;
    case 'blank':
      return h('p', { class: 'waits' }, 'left blank');
    case 'failed':
      return h('p', { class: 'failed' }, h('b', {}, 'Not worked: '), outcome.problem.message);
    case 'waiting':
      return createWaits(desk, cell, outcome);
    default:
      return outcome satisfies never;
  }
}

function createWaits(desk: Desk, cell: Cell, outcome: Outcome): HTMLElement {
  const root = findRoot(desk, cell);
  if (root === cell) {
    const message = outcome.state === 'waiting' ? outcome.problem.message : '';
    return h('p', { class: 'waits' }, message);
  }
  const link = h('a', { href: sheetHref(root.sheet, root.name) }, root.label);
  return h('p', { class: 'waits' }, 'waits for ', link, whyNot(desk, root));
}

/** The cell at the end of the line of those that wait: the one to be put right. */
export function findRoot(desk: Desk, cell: Cell): Cell {
  const seen = new Set<Cell>();
  let at = cell;
  while (!seen.has(at)) {
    seen.add(at);
    const next = nextInLine(desk, at);
    if (next === undefined) return at;
    at = next;
  }
  return at;
}

function nextInLine(desk: Desk, cell: Cell): Cell | undefined {
  if (cell.role === 'from' && cell.origin !== undefined) return desk.book.cells[cell.origin];
  const outcome = desk.outcomeOf(cell.index);
  if (outcome.state !== 'waiting' || outcome.problem.waitsFor === undefined) return undefined;
  return findCell(desk, cell.sheet, outcome.problem.waitsFor);
}

function whyNot(desk: Desk, cell: Cell): string {
  const { state } = desk.outcomeOf(cell.index);
  if (state === 'blank') return ', which is blank';
  return state === 'failed' ? ', which has no value' : '';
}
