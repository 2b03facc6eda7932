import type { Job } from '../job/record.ts';
import type { Saved, Store } from '../job/store.ts';

/** A drag changes the job many times a second; it is saved when it rests so long, in milliseconds. */
export const REST = 300;

export interface Saver {
  /** The job has changed: it will be saved soon. */
  touch(): void;
  /** Saves what is not saved yet, at once: the page is about to be hidden. */
  flush(): void;
}

export function createSaver(store: Store, job: () => Job, tell: (saved: Saved) => void): Saver {
  let waiting: ReturnType<typeof setTimeout> | undefined;

  function flush(): void {
    if (waiting === undefined) return;
    clearTimeout(waiting);
    waiting = undefined;
    tell(store.save(job()));
  }

  function touch(): void {
    clearTimeout(waiting);
    waiting = setTimeout(flush, REST);
  }

  return { touch, flush };
}
