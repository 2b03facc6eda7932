import { beforeEach, expect, test, vi } from 'vitest';
import { openDatabase } from '../../src/job/database.ts';
import { clearBrowser } from './made-store.ts';

beforeEach(clearBrowser);

test('a new browser gets a place for jobs, their steps and what is kept aside', async () => {
  const database = await openDatabase(() => {});
  expect([...database.objectStoreNames].sort()).toEqual(['aside', 'jobs', 'settings', 'steps']);
});

test('it lets go when it is to be cleared, and says so', async () => {
  const onGone = vi.fn();
  await openDatabase(onGone);
  const cleared = new Promise((resolve, reject) => {
    const asking = indexedDB.deleteDatabase('layshaft');
    asking.onsuccess = resolve;
    asking.onblocked = () => reject(new Error('blocked'));
  });
  await cleared;
  expect(onGone).toHaveBeenCalledOnce();
});
