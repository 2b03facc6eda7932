import type { Problem } from '../language/problem.ts';
import type { Cell } from './cell.ts';
import type { Draft } from './drafts.ts';
import type { LinkContext } from './link-formula.ts';

export interface CellContext extends LinkContext {
  readonly inputs: readonly number[];
  /** Set for a cell that stands in a loop. */
  readonly loop: Problem | undefined;
}

export interface Linked {
  readonly cell: Cell;
  readonly problems: readonly Problem[];
}

/** What all cells have; the rest depends on the role. */
export type Base = Pick<
  Cell,
  'index' | 'id' | 'sheet' | 'name' | 'label' | 'place' | 'display' | 'inputs'
> & {
  readonly source?: string;
};

/** A cell that can never be worked, with the role that it would have had. */
export function broken(
  draft: Draft,
  base: Base,
  [problem]: readonly Problem[],
  reported: readonly Problem[],
): Linked {
  const fault = { ...base, kind: undefined, ...(problem === undefined ? {} : { problem }) };
  const problems = reported.filter(({ code }) => code !== 'waiting');
  switch (draft.role) {
    case 'given':
      return { cell: { ...fault, role: 'given', statement: draft.statement }, problems };
    case 'from':
      return {
        cell: { ...fault, role: 'from', statement: draft.statement, origin: undefined },
        problems,
      };
    case 'work':
      return { cell: { ...fault, role: 'work', statement: draft.statement }, problems };
    case 'stack':
      return { cell: { ...fault, role: 'stack', statement: draft.statement, terms: [] }, problems };
    case 'table':
      return { cell: { ...fault, role: 'table', statement: draft.statement, rows: [] }, problems };
    default:
      return draft satisfies never;
  }
}
