import { expect, test } from 'vitest';
import { originOf } from '../../src/sheet/origin.ts';
import { block, makeBook } from './made-book.ts';

const MADE = makeBook({
  '10-a.md': block('given', 'x = 1 in "X"'),
  '20-b.md': block('from 10-a', 'x as y', 'no_such'),
  '30-c.md': block('from 20-b', 'y') + block('work', 'z = 2 * y'),
});

test('a value carried over two sheets comes from where it was entered', () => {
  expect(originOf(MADE.book, MADE.cell('30-c/y'))).toBe(MADE.cell('10-a/x'));
});

test('what is not carried is its own origin', () => {
  expect(originOf(MADE.book, MADE.cell('30-c/z'))).toBe(MADE.cell('30-c/z'));
});

test('what is carried from nowhere has none', () => {
  expect(originOf(MADE.book, MADE.cell('20-b/no_such'))).toBeUndefined();
  expect(originOf(MADE.book, undefined)).toBeUndefined();
});
