import type { Value } from '../language/kind.ts';
import type { Problem } from '../language/problem.ts';

/** What became of a cell. An error is a value that flows down the graph. */
export type Outcome =
  | { readonly state: 'value'; readonly value: Value }
  /** A given that was left empty. */
  | { readonly state: 'blank' }
  /** The cell itself is wrong: a bad entry, a division by zero. */
  | { readonly state: 'failed'; readonly problem: Problem }
  /** Sound, but it needs a cell that has no value; `problem` has code `waiting` and names that cell in `waitsFor`. */
  | { readonly state: 'waiting'; readonly problem: Problem };
