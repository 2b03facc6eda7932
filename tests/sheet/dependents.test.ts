import { expect, test } from 'vitest';
import { dependentsOf } from '../../src/sheet/dependents.ts';
import { upstreamOf } from '../../src/sheet/upstream.ts';
import { block, makeBook } from './made-book.ts';

//  a ──▶ c ──▶ d ──▶ over (on the other sheet) ──▶ e
//  b ──▶ d            b ──▶ check only             one ◀──▶ two, a loop that reads a
const MADE = makeBook({
  'made.md':
    block('given', 'a = 1', 'b = 1') +
    block('work', 'c = a', 'd = c + b', 'one = two + a', 'two = one') +
    block('check', 'b at least 0'),
  'other.md': block('from made', 'd as over') + block('work', 'e = over'),
});

const namesOf = (name: string) =>
  [...dependentsOf(MADE.book)(MADE.cell(name).index)].map((index) => MADE.book.cells[index]!.name);

test.each([
  ['a', ['a', 'c', 'd', 'over', 'e']],
  ['b', ['b', 'd', 'over', 'e']],
  ['d', ['d', 'over', 'e']],
  ['other/e', ['e']],
  ['one', ['one']],
])('on %s hang, itself first: %j', (name, names) => {
  expect(namesOf(name)).toEqual(names);
});

test('a book is turned round once', () => {
  expect(dependentsOf(MADE.book)).toBe(dependentsOf(MADE.book));
});

test('a cell hangs on another where, and only where, that one is among what it needs', () => {
  const { book } = MADE;
  for (const of of book.order) {
    for (const cell of book.order) {
      const hangs = dependentsOf(book)(of).has(cell);
      expect(upstreamOf(book.cells, [cell]).has(of)).toBe(hangs);
    }
  }
});
