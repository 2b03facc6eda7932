import type { History } from '../job/history.ts';
import type { Saved } from '../job/keeper.ts';

/** A drag changes the job many times a second; it is saved no more often than this, in milliseconds. */
export const REST = 300;
/** What could not be saved is tried again after so long, in milliseconds. */
export const RETRY = 5000;

export interface Saver {
  /** The job has changed: it is saved at once, or when the save before it is so long ago. */
  touch(): void;
  /** Saves what is not saved yet, at once. Resolves when nothing is left to be saved, or it failed. */
  flush(): Promise<void>;
  /** True while something is not saved. */
  isBehind(): boolean;
  dispose(): void;
}

export interface SaverOptions {
  history(): History;
  save(history: History): Promise<Saved>;
  tell(saved: Saved): void;
}

/** Sees to it that a change is in the store well within a second. Never two saves at a time. */
export function createSaver({ history, save, tell }: SaverOptions): Saver {
  let behind = false;
  let failed = false;
  let saving: Promise<void> | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;

  function wait(milliseconds: number): void {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      waiting = undefined;
      if (behind) void flush();
    }, milliseconds);
  }

  function touch(): void {
    behind = true;
    if (saving === undefined && (waiting === undefined || failed)) void flush();
  }

  function flush(): Promise<void> {
    if (saving !== undefined) return saving.then(() => (behind ? flush() : undefined));
    if (!behind) return Promise.resolve();
    saving = saveOnce().finally(() => {
      saving = undefined;
    });
    return saving;
  }

  async function saveOnce(): Promise<void> {
    behind = false;
    const saved = await save(history());
    failed = saved.state === 'failed';
    behind ||= failed;
    wait(failed ? RETRY : REST);
    tell(saved);
  }

  return {
    touch,
    flush,
    isBehind: () => behind || saving !== undefined,
    dispose: () => clearTimeout(waiting),
  };
}
