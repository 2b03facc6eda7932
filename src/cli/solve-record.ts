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
}

export type ResultValue = number | string | boolean | readonly (number | string)[];

export interface CheckRecord {
  /** Name of the value that is checked. */
  readonly name: string;
  readonly verdict: 'pass' | 'fail' | 'unknown';
  readonly text: string;
}
