import { expect, test } from 'vitest';
import { OLD_KEY, type Shelf } from '../../src/job/old-shelf.ts';
import { takeOverOldShelf } from '../../src/page/take-over.ts';
import { makeBlockedStore, makeBrowser } from './made-session.ts';

const OLD =
  '{"schema":1,"title":"Mine","system":"metric","entries":{"a":{"b":{"text":"1"}}},"ticks":{}}';

function makeShelf(
  texts: Readonly<Record<string, string>>,
): Shelf & { readonly all: Map<string, string> } {
  const all = new Map(Object.entries(texts));
  return {
    all,
    get length() {
      return all.size;
    },
    key: (i) => [...all.keys()][i] ?? null,
    getItem: (key) => all.get(key) ?? null,
    removeItem: (key) => void all.delete(key),
  };
}

test('the job of an earlier version is kept here, opened, and taken away there', async () => {
  const store = makeBrowser().openStore();
  const shelf = makeShelf({ [OLD_KEY]: OLD, 'layshaft/theme': 'dark' });
  await takeOverOldShelf(store, () => shelf);
  const [card] = await store.list();
  expect(card).toMatchObject({ title: 'Mine' });
  expect(await store.setting('open')).toBe(card!.id);
  expect([...shelf.all.keys()]).toEqual(['layshaft/theme']);
  await takeOverOldShelf(store, () => shelf);
  expect(await store.list()).toHaveLength(1);
});

test('what could not be read there is kept aside as it was', async () => {
  const store = makeBrowser().openStore();
  const shelf = makeShelf({ [OLD_KEY]: '{"schema":1,"tit', [`${OLD_KEY}/aside/1`]: 'older' });
  await takeOverOldShelf(store, () => shelf);
  expect((await store.listAside()).map(({ text }) => text)).toEqual(['{"schema":1,"tit', 'older']);
  expect(shelf.all.size).toBe(0);
});

test('nothing is taken away where it cannot be kept', async () => {
  const shelf = makeShelf({ [OLD_KEY]: OLD, [`${OLD_KEY}/aside/1`]: 'older' });
  await takeOverOldShelf(makeBlockedStore(), () => shelf);
  expect(shelf.all.size).toBe(2);
});

test('a browser that hands out no shelf has nothing on it', async () => {
  const refuse = (): never => {
    throw new DOMException('denied', 'SecurityError');
  };
  await expect(takeOverOldShelf(makeBlockedStore(), refuse)).resolves.toBeUndefined();
});
