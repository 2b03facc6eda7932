import { expect, test } from 'vitest';
import { NEW_JOB, withEntry } from '../../src/job/record.ts';
import { createStore, KEY, type Shelf } from '../../src/job/store.ts';

const NOON = new Date('2026-03-14T12:00:00Z');
const now = (): Date => NOON;
const job = withEntry(NEW_JOB, '20-gearing', 'redline', { text: '5800' });

function createShelf(
  start: readonly (readonly [string, string])[] = [],
  room = 10,
): Shelf & {
  readonly all: Map<string, string>;
} {
  const all = new Map(start);
  return {
    all,
    getItem: (key) => all.get(key) ?? null,
    setItem(key, value) {
      if (!all.has(key) && all.size >= room) throw new DOMException('full', 'QuotaExceededError');
      all.set(key, value);
    },
  };
}

test('what was saved is loaded again', () => {
  const shelf = createShelf();
  expect(createStore(shelf, now).save(job)).toEqual({ state: 'saved', at: NOON });
  expect(createStore(shelf, now).load()).toEqual({ job });
});

test('an empty shelf has no job and no trouble', () => {
  expect(createStore(createShelf(), now).load()).toEqual({});
});

test('a damaged job is kept aside, and told', () => {
  const shelf = createShelf([[KEY, '{"schema":1,"ti']]);
  const { job: loaded, trouble } = createStore(shelf, now).load();
  expect(loaded).toBeUndefined();
  expect(trouble).toMatch(/was cut off or changed by hand\. It is kept aside/);
  expect(shelf.all.get(`${KEY}/aside/${NOON.toISOString()}`)).toBe('{"schema":1,"ti');
});

test('after a damaged job the next one is saved', () => {
  const shelf = createShelf([[KEY, 'damaged']]);
  const store = createStore(shelf, now);
  store.load();
  expect(store.save(job).state).toBe('saved');
  expect(createStore(shelf, now).load()).toEqual({ job });
});

test('without room to keep a damaged job aside, nothing is saved over it', () => {
  const shelf = createShelf([[KEY, 'damaged']], 1);
  const store = createStore(shelf, now);
  expect(store.load().trouble).toMatch(/no room to keep it aside/);
  expect(store.save(job)).toMatchObject({ state: 'failed' });
  expect(shelf.all.get(KEY)).toBe('damaged');
});

test('a full shelf makes the save fail in words', () => {
  const store = createStore(createShelf([], 0), now);
  expect(store.save(job)).toMatchObject({
    state: 'failed',
    trouble: expect.stringMatching(/^Not saved/),
  });
});

test('a browser that keeps nothing says so at once', () => {
  const refuse = (): never => {
    throw new DOMException('denied', 'SecurityError');
  };
  const store = createStore({ getItem: refuse, setItem: refuse }, now);
  expect(store.load().trouble).toMatch(/nothing will be saved/);
  expect(store.save(job).state).toBe('failed');
});
