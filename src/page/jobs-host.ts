import type { History } from '../job/history.ts';
import type { Job } from '../job/record.ts';
import type { JobStore } from '../job/store.ts';
import type { Sheet } from '../sheet/sheet.ts';

/** What the page of jobs asks of the session. */
export interface JobsHost {
  readonly store: JobStore;
  /** Those of the house. */
  readonly sheets: readonly Sheet[];
  now(): Date;
  currentId(): string;
  openJob(id: string): Promise<void>;
  newJob(): void;
  openDemo(): Promise<void>;
  /** Opens a job as one more, with what is to be said about it; `hash` is where it opens. */
  openCopy(job: Job, standing: readonly string[], hash?: string): Promise<void>;
  /** The open job anew, when its sheets are others. */
  reopen(history: History, hash: string): Promise<void>;
  /** Says something until the person has taken note of it. */
  announce(sentence: string): void;
}
