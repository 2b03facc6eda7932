import { freshId } from './fresh-id.ts';
import type { History } from './history.ts';
import type { Job } from './record.ts';
import type { JobStore } from './store.ts';

/** What became of a save, for the page to tell. */
export type Saved =
  | { readonly state: 'saved'; readonly at: Date }
  /** Another window had saved first: this window goes on with a copy, under this title. */
  | { readonly state: 'copied'; readonly at: Date; readonly title: string }
  | { readonly state: 'failed'; readonly trouble: string };

/** Keeps one open job in the store. */
export interface Keeper {
  id(): string;
  revision(): number;
  /** Saves what differs from what was saved last. */
  save(history: History): Promise<Saved>;
  /** Leaves word of what is not saved, as the page goes. True where there was any. */
  rescue(history: History): boolean;
  /** This job is what the store holds: another window saved it. */
  follow(job: Job, revision: number): void;
  isSaved(job: Job): boolean;
}

export interface KeptJob {
  readonly id: string;
  /** 0 while it stands in no store. */
  readonly revision: number;
  readonly job: Job;
}

/** @param onSaved called after each save, for the other windows to be told */
export function createKeeper(
  store: JobStore,
  start: KeptJob,
  now: () => Date,
  onSaved: (id: string, revision: number) => void,
): Keeper {
  let { id, revision, job: saved } = start;
  let savedAt: Date | undefined;
  let underWay = 0;

  async function save(history: History): Promise<Saved> {
    if (history.job === saved && revision > 0) return { state: 'saved', at: savedAt ?? now() };
    underWay += 1;
    const outcome = await store.save(id, revision, history);
    underWay -= 1;
    if (outcome.state === 'failed') return outcome;
    if (outcome.state === 'overtaken') return saveCopy(history);
    ({ revision, at: savedAt } = outcome);
    saved = history.job;
    onSaved(id, revision);
    return { state: 'saved', at: savedAt };
  }

  async function saveCopy(history: History): Promise<Saved> {
    id = freshId();
    revision = 0;
    const title = `${history.job.title} (copy of this window)`;
    const job = { ...history.job, title };
    const outcome = await save({ ...history, job });
    return outcome.state === 'saved' ? { state: 'copied', at: outcome.at, title } : outcome;
  }

  return {
    id: () => id,
    revision: () => revision,
    save,
    rescue(history) {
      if (history.job === saved) return false;
      store.rescue(id, revision + underWay, history);
      return true;
    },
    follow(job, followed) {
      saved = job;
      revision = followed;
      savedAt = now();
    },
    isSaved: (job) => job === saved,
  };
}
