import { beforeEach, describe, expect, test } from 'vitest';
import { openDatabase } from '../../src/job/database.ts';
import { createHistory, undo } from '../../src/job/history.ts';
import { NEW_JOB } from '../../src/job/record.ts';
import { createStore, type JobStore } from '../../src/job/store.ts';
import { HOSTILE_NAMES, makeLargeJob } from './made-job.ts';
import { makeShelf } from './made-shelf.ts';
import { clearBrowser, makeStore, NOON, typeAll, typed } from './made-store.ts';

beforeEach(clearBrowser);

async function jobIn(store: JobStore, id = 'a') {
  const loaded = await store.load(id);
  if (loaded.state !== 'loaded') throw new Error(loaded.state);
  return loaded;
}

describe('what was saved', () => {
  test('is loaded again, with its name, its time and its steps', async () => {
    const history = typeAll('5800', '5900');
    expect(await makeStore().save('a', 0, history)).toEqual({
      state: 'saved',
      at: NOON,
      revision: 1,
    });
    const loaded = await jobIn(makeStore());
    expect(loaded).toMatchObject({ revision: 1, savedAt: NOON, issues: [] });
    expect(loaded.history.job).toEqual(typed('5900'));
    expect(undo(loaded.history).job).toEqual(typed('5800'));
    expect(loaded.history.past.at(-1)?.label).toBe('redline to 5900');
  });

  test('stands in the list, the last saved first', async () => {
    let minutes = 0;
    const store = makeStore(() => new Date(NOON.getTime() + 60_000 * minutes++));
    await store.save('a', 0, createHistory({ ...NEW_JOB, title: 'One', vehicle: 'Estate' }));
    await store.save('b', 0, createHistory({ ...NEW_JOB, title: 'Two' }));
    expect((await store.list()).map(({ id, title, vehicle }) => [id, title, vehicle])).toEqual([
      ['b', 'Two', ''],
      ['a', 'One', 'Estate'],
    ]);
  });

  test('may be a job of ten megabytes', async () => {
    const job = makeLargeJob(10_000_000);
    expect(await makeStore().save('a', 0, createHistory(job))).toMatchObject({ state: 'saved' });
    expect((await jobIn(makeStore())).history.job).toEqual(job);
  });

  test.each(HOSTILE_NAMES)('may be called %j', async (name) => {
    await makeStore().save(name, 0, createHistory({ ...NEW_JOB, title: name }));
    expect((await makeStore().list())[0]).toMatchObject({ id: name, title: name });
    expect((await jobIn(makeStore(), name)).history.job.title).toBe(name);
  });

  test('does not hang on the clock: set back a year, the newest is still the newest', async () => {
    let now = NOON;
    const store = makeStore(() => now);
    await store.save('a', 0, typeAll('5800'));
    now = new Date('2025-03-14T12:00:00Z');
    expect(await store.save('a', 1, typeAll('5900'))).toMatchObject({ state: 'saved', at: now });
    const loaded = await jobIn(makeStore());
    expect(loaded.history.job).toEqual(typed('5900'));
    expect(loaded.revision).toBe(2);
  });
});

test('a job that is nowhere is told from one that cannot be read', async () => {
  expect(await makeStore().load('a')).toEqual({ state: 'none' });
  const database = await openDatabase(() => {});
  const row = { id: 'a', title: '', vehicle: '', savedAt: 0, revision: 1, text: 'damaged' };
  await database.put('jobs', row);
  expect(await makeStore().load('a')).toMatchObject({ state: 'unreadable', text: 'damaged' });
});

test('a job that is damaged in the store opens as far as it can be read, and says so', async () => {
  const store = makeStore();
  await store.save('a', 0, typeAll('5800'));
  const database = await openDatabase(() => {});
  const row = (await database.get('jobs', 'a'))!;
  await database.put('jobs', { ...row, text: row.text.slice(0, -20) });
  expect((await jobIn(store)).issues).not.toEqual([]);
});

describe('two windows', () => {
  test('never overwrite each other', async () => {
    const [one, two] = [makeStore(), makeStore()];
    await one.save('a', 0, typeAll('5800'));
    const { revision } = await jobIn(two);
    await one.save('a', revision, typeAll('5900'));
    expect(await two.save('a', revision, typeAll('6000'))).toEqual({
      state: 'overtaken',
      revision: 2,
    });
    expect((await jobIn(two)).history.job).toEqual(typed('5900'));
  });

  test('that save at the same moment: one is first, the other is told', async () => {
    const stores = Array.from({ length: 8 }, () => makeStore());
    await stores[0]!.save('a', 0, typeAll('1'));
    const outcomes = await Promise.all(
      stores.map((store, i) => store.save('a', 1, typeAll(String(i)))),
    );
    expect(outcomes.filter(({ state }) => state === 'saved')).toHaveLength(1);
    expect(outcomes.filter(({ state }) => state === 'overtaken')).toHaveLength(7);
  });
});

describe('what a window left word of as it was closed', () => {
  const rescued = async (revision: number, text: string) => {
    const store = makeStore();
    await store.save('a', 0, typeAll('5800'));
    store.rescue('a', revision, typeAll(text));
    return (await jobIn(makeStore())).history;
  };

  test('is there when it is opened again, and can be undone', async () => {
    const history = await rescued(1, '5900');
    expect(history.job).toEqual(typed('5900'));
    expect(undo(history).job).toEqual(typed('5800'));
  });

  test('counts for nothing once something newer was saved', async () => {
    expect((await rescued(0, '5900')).job).toEqual(typed('5800'));
  });

  test('is no step where it had been saved after all', async () => {
    expect((await rescued(1, '5800')).past).toHaveLength(1);
  });

  test('is all there is of a job that was never saved, and is saved then', async () => {
    makeStore().rescue('a', 0, typeAll('5900'));
    const { history, revision } = await jobIn(makeStore());
    expect({ job: history.job, revision }).toEqual({ job: typed('5900'), revision: 1 });
    expect(await makeStore().list()).toMatchObject([{ id: 'a' }]);
  });

  test('goes with the job when it is taken out', async () => {
    const store = makeStore();
    await store.save('a', 0, typeAll('5800'));
    store.rescue('a', 1, typeAll('5900'));
    await store.remove('a');
    expect(await makeStore().load('a')).toEqual({ state: 'none' });
  });

  test('is gone with the next save', async () => {
    const store = makeStore();
    await store.save('a', 0, typeAll('5800'));
    store.rescue('a', 1, typeAll('5900'));
    await store.save('a', 1, typeAll('6000'));
    expect((await jobIn(makeStore())).history.job).toEqual(typed('6000'));
  });
});

test('a job that was taken out can be brought back', async () => {
  const store = makeStore();
  await store.save('a', 0, typeAll('5800', '5900'));
  const bringBack = await store.remove('a');
  expect(await store.load('a')).toEqual({ state: 'none' });
  await bringBack!();
  const loaded = await jobIn(store);
  expect(loaded.history.job).toEqual(typed('5900'));
  expect(loaded.history.past).toHaveLength(2);
  expect(await store.remove('b')).toBeUndefined();
});

test('what cannot be read is kept aside as it was found', async () => {
  const store = makeStore();
  expect(await store.keepAside('damaged', 'cut off')).toBe(true);
  expect(await store.listAside()).toMatchObject([{ text: 'damaged', why: 'cut off' }]);
});

test('a setting is remembered', async () => {
  await makeStore().set('open', 'a');
  expect(await makeStore().setting('open')).toBe('a');
  expect(await makeStore().setting('none')).toBeUndefined();
});

describe('a browser', () => {
  test('that was cleared in mid-session has the job again with the next save', async () => {
    const store = makeStore();
    await store.save('a', 0, typeAll('5800'));
    await new Promise((resolve) => {
      indexedDB.deleteDatabase('layshaft').onsuccess = resolve;
    });
    expect(await store.save('a', 1, typeAll('5900'))).toMatchObject({ state: 'saved' });
    expect((await jobIn(makeStore())).history.job).toEqual(typed('5900'));
  });

  const failing = (name: string) =>
    createStore(
      async () => {
        throw new DOMException('no', name);
      },
      makeShelf(),
      () => NOON,
    );

  test.each([
    ['QuotaExceededError', /^Not saved: this browser has no room left.*download the job/],
    ['SecurityError', /^Not saved: this browser does not let the page keep.*download the job/],
    ['UnknownError', /^Not saved/],
    ['InvalidStateError', /^Not saved/],
  ])('that fails with %s is told in a sentence, and nothing is thrown', async (name, trouble) => {
    const store = failing(name);
    expect(await store.save('a', 0, typeAll('1'))).toEqual({
      state: 'failed',
      trouble: expect.stringMatching(trouble),
    });
    expect(await store.load('a')).toMatchObject({ state: 'failed' });
    expect(await store.list()).toEqual([]);
    expect(await store.listAside()).toEqual([]);
    expect(await store.keepAside('x', 'y')).toBe(false);
    expect(await store.remove('a')).toBeUndefined();
    expect(await store.setting('a')).toBeUndefined();
    store.rescue('a', 0, typeAll('1'));
  });

  test('without a database at all is told the same way', async () => {
    Object.assign(globalThis, { indexedDB: undefined });
    expect(await makeStore().save('a', 0, typeAll('1'))).toMatchObject({ state: 'failed' });
  });

  test('that is full in the middle of a save has kept what was there before', async () => {
    const store = makeStore();
    await store.save('a', 0, typeAll('5800'));
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given) {
      if (this.name === 'steps') throw new DOMException('full', 'QuotaExceededError');
      return put.apply(this, given);
    };
    const outcome = await store.save('a', 1, typeAll('5900'));
    IDBObjectStore.prototype.put = put;
    expect(outcome).toMatchObject({ state: 'failed', trouble: expect.stringMatching(/no room/) });
    expect((await jobIn(store)).history.job).toEqual(typed('5800'));
  });
});
