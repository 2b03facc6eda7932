import { describe, expect, test } from 'vitest';
import { findRoot, whyBroken } from '../../src/sheet/waiting.ts';
import { block, makeBook, messageOf } from './made-book.ts';

const MADE = makeBook({
  'made.md':
    block('given', 'bad = 3 furlong', 'open = blank', 'fine = 3') +
    block('work', 'one = bad + 1', 'two = one + fine', 'left = open + fine', 'right = left * 2'),
  'other.md': block('from made', 'two as carried', 'right') + block('work', 'three = carried'),
});
const why = (name: string) => whyBroken(MADE.book.cells, MADE.cell(name).index);

describe('why a cell can never be worked, in words that follow "which"', () => {
  test.each([
    ['bad', 'has an error'],
    ['one', 'waits for bad, which has an error'],
    ['two', 'waits for bad, which has an error'],
    ['other/carried', 'waits for made: bad, which has an error'],
    ['other/three', 'waits for made: bad, which has an error'],
  ])('%s %s', (name, words) => {
    expect(why(name)).toBe(words);
    expect(why(name)).toBe(words);
  });
});

describe('a cell that waits when it is worked names the cell at the root', () => {
  test.each([
    ['left', 'waits for open, which is blank'],
    ['right', 'waits for left, which waits for open, which is blank'],
    ['other/right', 'waits for made: right, which waits for open, which is blank'],
  ])('%s %s', (name, words) => {
    expect(messageOf(MADE, name)).toBe(words);
  });
});

test('a cell that has a value is its own root', () => {
  const { index } = MADE.cell('fine');
  expect(findRoot(MADE.book.cells, index, () => undefined).name).toBe('fine');
});
