import type { ProblemRecord } from './problem-record.ts';
import type { ResultValue } from './solve-record.ts';

/** What `compare --json` prints. */
export interface CompareRecord {
  readonly sheet: string;
  /** The job as it is first. */
  readonly columns: readonly { readonly name: string; readonly problems: readonly string[] }[];
  readonly results: Readonly<Record<string, ComparedRecord>>;
  readonly problems: readonly ProblemRecord[];
}

export interface ComparedRecord {
  readonly label: string;
  readonly unit: string;
  /** One a column; null where there is none. */
  readonly values: readonly (ResultValue | null)[];
  readonly texts: readonly string[];
  /** Against the first column, in sign and words. */
  readonly differences: readonly (string | null)[];
  readonly differs: boolean;
}
