import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { StoredSteps } from './stored-history.ts';

/** A job as it is kept in the browser. */
export interface JobRow {
  readonly id: string;
  readonly title: string;
  readonly vehicle: string;
  /** Milliseconds by the clock of this device, which may be set back: never used to tell new from old. */
  readonly savedAt: number;
  /** One more with each save: whoever saves must have seen the one before. */
  readonly revision: number;
  readonly text: string;
}

/** Something that could not be read, kept as it was found. */
export interface AsideRow {
  readonly text: string;
  readonly at: number;
  readonly why: string;
}

export interface JobSchema extends DBSchema {
  jobs: { key: string; value: JobRow };
  steps: { key: string; value: StoredSteps & { readonly id: string } };
  aside: { key: number; value: AsideRow };
  settings: { key: string; value: string };
}

export type JobDatabase = IDBPDatabase<JobSchema>;

const NAME = 'layshaft';
const VERSION = 1;

/**
 * Opens the browser's own database. It is let go of when another window wants to change or clear it.
 *
 * @param onGone called when the database is gone or has been let go of
 * @param name of the database; the app has one
 */
export function openDatabase(onGone: () => void, name = NAME): Promise<JobDatabase> {
  return openDB<JobSchema>(name, VERSION, {
    upgrade(database) {
      database.createObjectStore('jobs', { keyPath: 'id' });
      database.createObjectStore('steps', { keyPath: 'id' });
      database.createObjectStore('aside', { autoIncrement: true });
      database.createObjectStore('settings');
    },
    blocking(_current, _wanted, event) {
      (event.target as IDBDatabase).close();
      onGone();
    },
    terminated: onGone,
  });
}
