import type { IDBPTransaction } from 'idb';
import type { JobDatabase, JobRow, JobSchema } from './database.ts';
import { createHistory, type History } from './history.ts';
import type { JobIssue } from './read-fields.ts';
import { formatJob, parseJob } from './read-job.ts';
import { clearRescue, findRescue, leaveRescue, type Rescue } from './rescue.ts';
import type { SmallShelf } from './shelf.ts';
import { restoreHistory, storeSteps } from './stored-history.ts';

/** What a list of jobs tells of one. */
export type JobCard = Omit<JobRow, 'text'>;

export type Loading =
  | {
      readonly state: 'loaded';
      readonly revision: number;
      readonly history: History;
      readonly savedAt: Date;
      /** What was amiss in what was kept. */
      readonly issues: readonly JobIssue[];
    }
  | { readonly state: 'none' }
  /** It stands in the store and cannot be read; nothing will be saved over it. */
  | { readonly state: 'unreadable'; readonly trouble: string; readonly text: string }
  | { readonly state: 'failed'; readonly trouble: string };

export type Saving =
  | { readonly state: 'saved'; readonly at: Date; readonly revision: number }
  /** Another window has saved since: nothing was overwritten. */
  | { readonly state: 'overtaken'; readonly revision: number }
  | { readonly state: 'failed'; readonly trouble: string };

/** Jobs in the browser's own database. Nothing here throws: what goes wrong is a sentence. */
export interface JobStore {
  list(): Promise<readonly JobCard[]>;
  load(id: string): Promise<Loading>;
  /** Saves what follows `revision`; 0 for a job that is new. */
  save(id: string, revision: number, history: History): Promise<Saving>;
  /** Leaves word of what is not saved yet, at once: the page is about to go. */
  rescue(id: string, revision: number, history: History): void;
  /** Takes a job out and gives what brings it back; undefined where nothing was there. */
  remove(id: string): Promise<(() => Promise<void>) | undefined>;
  keepAside(text: string, why: string): Promise<boolean>;
  listAside(): Promise<readonly { readonly text: string; readonly why: string }[]>;
  setting(name: string): Promise<string | undefined>;
  set(name: string, value: string): Promise<void>;
}

/**
 * @param open opens the database; it is called again when the database was lost
 * @param shelf for what cannot wait
 */
export function createStore(
  open: (onGone: () => void) => Promise<JobDatabase>,
  shelf: SmallShelf,
  now: () => Date,
): JobStore {
  let database: Promise<JobDatabase> | undefined;

  function connect(): Promise<JobDatabase> {
    database ??= open(forget).catch((error) => {
      forget();
      throw error;
    });
    return database;
  }

  function forget(): void {
    database = undefined;
  }

  /** Does it once more with a fresh connection where the first was lost: a browser may have cleared it. */
  async function attempt<T>(act: (opened: JobDatabase) => Promise<T>): Promise<T> {
    try {
      return await act(await connect());
    } catch (error) {
      if (nameOf(error) !== 'InvalidStateError') throw error;
      forget();
      return act(await connect());
    }
  }

  async function quietly<T>(act: (opened: JobDatabase) => Promise<T>, otherwise: T): Promise<T> {
    try {
      return await attempt(act);
    } catch {
      return otherwise;
    }
  }

  return {
    list: () =>
      quietly(async (opened) => {
        const rows = await opened.getAll('jobs');
        return rows.map(({ text: _, ...card }) => card).sort((a, b) => b.savedAt - a.savedAt);
      }, []),

    async load(id) {
      try {
        const rescue = findRescue(shelf, id);
        return await attempt(async (opened) => {
          const loaded = await load(opened, id, rescue);
          const isNew = loaded.state === 'none' && rescue !== undefined;
          return isNew ? takeIn(opened, id, rescue, now()) : loaded;
        });
      } catch (error) {
        return { state: 'failed', trouble: explainFailure(error) };
      }
    },

    async save(id, revision, history) {
      try {
        const saving = await attempt((opened) =>
          save(opened, { id, revision, history, at: now() }),
        );
        // Word that was left after this save had begun is newer than the save.
        const rescue = saving.state === 'saved' ? findRescue(shelf, id) : undefined;
        if (rescue !== undefined && rescue.revision <= revision) clearRescue(shelf, id);
        return saving;
      } catch (error) {
        return { state: 'failed', trouble: explainFailure(error) };
      }
    },

    rescue: (id, revision, { job }) => leaveRescue(shelf, id, { revision, text: formatJob(job) }),

    remove(id) {
      clearRescue(shelf, id);
      return quietly((opened) => remove(opened, id), undefined);
    },

    keepAside: (text, why) =>
      quietly(async (opened) => {
        await opened.add('aside', { text, why, at: now().getTime() });
        return true;
      }, false),

    listAside: () => quietly((opened) => opened.getAll('aside'), []),

    setting: (name) => quietly((opened) => opened.get('settings', name), undefined),

    set: (name, value) =>
      quietly(async (opened) => {
        await opened.put('settings', value, name);
      }, undefined),
  };
}

async function load(
  database: JobDatabase,
  id: string,
  rescue: Rescue | undefined,
): Promise<Loading> {
  const reading = database.transaction(['jobs', 'steps']);
  const [row, steps] = await Promise.all([
    reading.objectStore('jobs').get(id),
    reading.objectStore('steps').get(id),
  ]);
  if (row === undefined) return { state: 'none' };
  const read = parseJob(row.text);
  if (!read.ok) return { state: 'unreadable', trouble: read.message, text: row.text };
  const { past, future } = steps ?? { past: [], future: [] };
  const kept = restoreHistory(read.job, { past, future });
  const isNewer = rescue !== undefined && rescue.revision >= row.revision;
  const history = isNewer ? addRescue(kept, rescue.text) : kept;
  const { revision, savedAt } = row;
  return { state: 'loaded', revision, history, savedAt: new Date(savedAt), issues: read.issues };
}

/** A job that a window left word of before it was ever saved. */
async function takeIn(
  database: JobDatabase,
  id: string,
  { text }: Rescue,
  at: Date,
): Promise<Loading> {
  const read = parseJob(text);
  if (!read.ok) return { state: 'none' };
  await save(database, { id, revision: 0, history: createHistory(read.job), at });
  return load(database, id, undefined);
}

/** What a window left word of when it was closed is one more step, if it is anything new. */
function addRescue(history: History, text: string): History {
  const read = parseJob(text);
  if (!read.ok || formatJob(history.job) === formatJob(read.job)) return history;
  const step = { label: 'what was entered last', before: history.job, after: read.job };
  return { job: read.job, past: [...history.past, step], future: [] };
}

interface Order {
  readonly id: string;
  readonly revision: number;
  readonly history: History;
  readonly at: Date;
}

/** In one transaction: whoever else saves waits, and then sees this revision. All of it or nothing. */
async function save(database: JobDatabase, order: Order): Promise<Saving> {
  const change = database.transaction(['jobs', 'steps'], 'readwrite');
  try {
    const outcome = await write(change, order);
    await change.done;
    return outcome;
  } catch (error) {
    change.done.catch(() => {});
    abort(change);
    throw error;
  }
}

type Change = IDBPTransaction<JobSchema, ('jobs' | 'steps')[], 'readwrite'>;

async function write(change: Change, { id, revision, history, at }: Order): Promise<Saving> {
  const jobs = change.objectStore('jobs');
  const found = await jobs.get(id);
  if (found !== undefined && found.revision !== revision) {
    return { state: 'overtaken', revision: found.revision };
  }
  const { title, vehicle } = history.job;
  const next = revision + 1;
  const text = formatJob(history.job);
  await jobs.put({ id, title, vehicle, savedAt: at.getTime(), revision: next, text });
  await change.objectStore('steps').put({ id, ...storeSteps(history) });
  return { state: 'saved', at, revision: next };
}

function abort(change: Change): void {
  try {
    change.abort();
  } catch {
    // It had been undone already.
  }
}

async function remove(
  database: JobDatabase,
  id: string,
): Promise<(() => Promise<void>) | undefined> {
  const change = database.transaction(['jobs', 'steps'], 'readwrite');
  const row = await change.objectStore('jobs').get(id);
  const steps = await change.objectStore('steps').get(id);
  await change.objectStore('jobs').delete(id);
  await change.objectStore('steps').delete(id);
  await change.done;
  if (row === undefined) return undefined;
  return async () => {
    const back = database.transaction(['jobs', 'steps'], 'readwrite');
    await back.objectStore('jobs').put(row);
    if (steps !== undefined) await back.objectStore('steps').put(steps);
    await back.done;
  };
}

function nameOf(error: unknown): string {
  return error instanceof Error || error instanceof DOMException ? error.name : '';
}

const TAKE_FILE =
  'What you enter stays only until the page is closed: download the job as a file to keep it.';

function explainFailure(error: unknown): string {
  if (nameOf(error) === 'QuotaExceededError') {
    return `Not saved: this browser has no room left for it. ${TAKE_FILE}`;
  }
  return `Not saved: this browser does not let the page keep anything, as in a private window. ${TAKE_FILE}`;
}
