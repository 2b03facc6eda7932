import { formatJob, parseJob } from './read-job.ts';
import type { Job } from './record.ts';

/** The part of `localStorage` that a store needs. */
export interface Shelf {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

export const KEY = 'layshaft/job/1';

export interface Loaded {
  /** Undefined where nothing is stored, or nothing that can be read. */
  readonly job?: Job;
  /** What went wrong, as a sentence for the page. */
  readonly trouble?: string;
}

export type Saved =
  | { readonly state: 'saved'; readonly at: Date }
  | { readonly state: 'failed'; readonly trouble: string };

export interface Store {
  load(): Loaded;
  save(job: Job): Saved;
}

const NO_SHELF = 'This browser does not let the page keep anything: nothing will be saved.';
const NOT_SAVED =
  'Not saved: this browser has no room left, or does not let the page keep anything. What you entered stays only until the page is closed.';

/** Keeps one job on a shelf. What cannot be read is put aside under a key of its own, never lost. */
export function createStore(shelf: Shelf, now: () => Date): Store {
  /** Unreadable text that still stands under the job's own key. */
  let stranded: string | undefined;

  function load(): Loaded {
    let text: string | null;
    try {
      text = shelf.getItem(KEY);
    } catch {
      return { trouble: NO_SHELF };
    }
    if (text === null) return {};
    const reading = parseJob(text);
    if (reading.ok) return { job: reading.job };
    stranded = text;
    return {
      trouble: `${reading.message}. ${putAside()} The page starts from the worked example.`,
    };
  }

  function putAside(): string {
    const key = `${KEY}/aside/${now().toISOString()}`;
    try {
      shelf.setItem(key, stranded!);
      stranded = undefined;
      return `It is kept aside in this browser as "${key}".`;
    } catch {
      return 'There is no room to keep it aside, so nothing will be saved over it.';
    }
  }

  function save(job: Job): Saved {
    if (stranded !== undefined) putAside();
    if (stranded !== undefined) return { state: 'failed', trouble: NOT_SAVED };
    try {
      shelf.setItem(KEY, formatJob(job));
      return { state: 'saved', at: now() };
    } catch {
      return { state: 'failed', trouble: NOT_SAVED };
    }
  }

  return { load, save };
}
