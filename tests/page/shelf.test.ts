import { expect, test } from 'vitest';
import { createShelf } from '../../src/page/shelf.ts';

test('what is put on the shelf is found there, and can be taken off', () => {
  const shelf = createShelf(() => sessionStorage);
  shelf.setItem('layshaft-test', 'a');
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
