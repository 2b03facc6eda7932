import type { ProblemRecord } from './problem-record.ts';

/** What `solve --json` prints. The names of its fields are a promise to other programs. */
export interface SolveRecord {
  readonly sheet: string;
  /** By name, in the order of the sheet. */
  readonly results: Readonly<Record<string, ResultRecord>>;
  readonly checks: readonly CheckRecord[];
  readonly problems: readonly ProblemRecord[];
}

export interface ResultRecord {
  /** In `unit`, not rounded; null where there is none. */
  readonly value: ResultValue | null;
  /** Symbol of the unit that the sheet shows the result in; '' for plain numbers and texts. */
  readonly unit: string;
  /** As the page shows it, or why there is no value. */
  readonly text: string;
  /**
   * How sure it is, in `unit`; left out where nothing that it hangs on is in doubt. One entry an
   * element where the result is a list.
   */
  readonly worst?: RangeRecord | readonly RangeRecord[];
  /** With a confidence of 95 %; null where the result bends too much for that. */
  readonly likely?: RangeRecord | null | readonly (RangeRecord | null)[];
  /** Whose doubt it is, the largest share of the variance first. */
  readonly shares?: readonly ShareRecord[] | readonly (readonly ShareRecord[])[];
}

export interface RangeRecord {
  readonly from: number;
  readonly to: number;
}

export interface ShareRecord {
  /** The given, as the sheet of the result names it or as `sheet/name`. */
  readonly name: string;
  /** 0 to 1. */
  readonly share: number;
}

export type ResultValue = number | string | boolean | readonly (number | string)[];

export interface CheckRecord {
  /** Name of the value that is checked. */
  readonly name: string;
  readonly verdict: 'pass' | 'fail' | 'unknown';
  readonly text: string;
}
