import { expect, test } from 'vitest';
import { listSupports, listWorking } from '../../src/sheet/working.ts';
import { block, makeBook } from './made-book.ts';

const { book, cell } = makeBook({
  '10-a.md': block('given', 'x = 1') + block('work', 'double = 2 * x', 'unused = 3 * x'),
  '20-b.md':
    block('from 10-a', 'double') + block('work', 'end = half + double', 'half = double / 2'),
});

const working = (name: string) => listWorking(book, cell(name).index).map(({ id }) => id);

test('the working is every formula that a result rests on, each after those that it needs', () => {
  expect(working('20-b/end')).toEqual(['10-a/double', '20-b/half', '20-b/end']);
});

test('a reading has no working', () => {
  expect(working('10-a/x')).toEqual([]);
});

test('a line rests on what its formula names; what is carried stands for its origin', () => {
  const supports = listSupports(book, cell('20-b/end')).map(({ id }) => id);
  expect([...supports].sort()).toEqual(['10-a/double', '20-b/half']);
});
