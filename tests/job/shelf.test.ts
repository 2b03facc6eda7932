import { expect, test } from 'vitest';
import { createShelf } from '../../src/job/shelf.ts';
import { makeShelf } from './made-shelf.ts';

test('what is put on the shelf is found there, and can be taken off', () => {
  const own = makeShelf();
  const shelf = createShelf(() => own);
  shelf.setItem('layshaft-test', 'a');
  expect(own.getItem('layshaft-test')).toBe('a');
  expect(shelf.getItem('layshaft-test')).toBe('a');
  shelf.removeItem('layshaft-test');
  expect(shelf.getItem('layshaft-test')).toBeNull();
});

test('a browser that hands out none has an empty one', () => {
  const shelf = createShelf(() => {
    throw new DOMException('denied', 'SecurityError');
  });
  expect(() => shelf.setItem('a', 'b')).not.toThrow();
  expect(() => shelf.removeItem('a')).not.toThrow();
  expect(shelf.getItem('a')).toBeNull();
});
