import { expect, test } from 'vitest';
import { clearOldShelf, OLD_KEY, readOldShelf, type Shelf } from '../../src/job/old-shelf.ts';

function makeShelf(texts: Readonly<Record<string, string>>): Shelf {
  const all = new Map(Object.entries(texts));
  return {
    get length() {
      return all.size;
    },
    key: (i) => [...all.keys()][i] ?? null,
    getItem: (key) => all.get(key) ?? null,
    removeItem: (key) => void all.delete(key),
  };
}

test('the job comes first, then what was kept aside; nothing else is touched', () => {
  const aside = `${OLD_KEY}/aside/2026-03-14`;
  const shelf = makeShelf({ [aside]: 'damaged', 'layshaft/theme': 'dark', [OLD_KEY]: '{}' });
  expect(readOldShelf(shelf)).toEqual([
    { key: OLD_KEY, text: '{}' },
    { key: aside, text: 'damaged' },
  ]);
  clearOldShelf(shelf, OLD_KEY);
  expect(readOldShelf(shelf).map(({ key }) => key)).toEqual([aside]);
  expect(shelf.getItem('layshaft/theme')).toBe('dark');
});

test('a browser that refuses its shelf has nothing on it', () => {
  const refuse = (): never => {
    throw new DOMException('denied', 'SecurityError');
  };
  const shelf = { length: 1, key: refuse, getItem: refuse, removeItem: refuse };
  expect(readOldShelf(shelf)).toEqual([]);
  expect(() => clearOldShelf(shelf, OLD_KEY)).not.toThrow();
});
