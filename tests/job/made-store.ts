import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { openDatabase } from '../../src/job/database.ts';
import { createHistory, type History, record } from '../../src/job/history.ts';
import { type Job, NEW_JOB, withEntry } from '../../src/job/record.ts';
import { createStore, type JobStore } from '../../src/job/store.ts';
import { makeShelf } from './made-shelf.ts';

export const NOON = new Date('2026-03-14T12:00:00Z');

let shelf = makeShelf();

/** A browser that has never kept anything. */
export function clearBrowser(): void {
  globalThis.indexedDB = new IDBFactory();
  shelf = makeShelf();
}

/** A window of that browser. */
export function makeStore(now: () => Date = () => NOON): JobStore {
  return createStore(openDatabase, shelf, now);
}

export function typed(text: string, job: Job = NEW_JOB): Job {
  return withEntry(job, '20-gearing', 'redline', { text, unit: 'rpm' });
}

/** A job into which these were typed one after another. */
export function typeAll(...texts: readonly string[]): History {
  return texts.reduce(
    (history, text) => record(history, `redline to ${text}`, typed(text, history.job)),
    createHistory(NEW_JOB),
  );
}
