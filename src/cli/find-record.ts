import type { ProblemRecord } from './problem-record.ts';

/** What `find --json` prints. */
export interface FindRecord {
  readonly sheet: string;
  readonly result: string;
  readonly element: string | null;
  readonly given: string;
  readonly target: { readonly value: number; readonly unit: string; readonly text: string };
  /** Null where rows of a table were tried and there was no range to search. */
  readonly range: { readonly from: number; readonly to: number; readonly unit: string } | null;
  readonly depends: boolean;
  readonly sentence: string;
  readonly solutions: readonly {
    readonly from: number;
    readonly to: number;
    readonly text: string;
  }[];
  readonly closest: { readonly given: number; readonly result: number } | null;
  readonly stocked: readonly StockedRecord[];
  readonly problems: readonly ProblemRecord[];
}

export interface StockedRecord {
  /** The row of a table, or the size with its unit. */
  readonly name: string;
  /** In the unit of the range; null for a row that is no single figure. */
  readonly given: number | null;
  readonly result: number | null;
  readonly text: string;
}
