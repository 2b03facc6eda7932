import { expect, test } from 'vitest';
import { linkBook } from '../../src/sheet/book.ts';
import { createFrame } from '../../src/sheet/create-frame.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { block } from './made-book.ts';

const TEXT =
  block(
    'given',
    'gap = 3 mm',
    'names = "free"',
    'sizes = [1, 2] mm',
    'spare = blank mm',
    'bad = 3 furlong',
    'bolt = pick "Long" from bolts',
  ) +
  block('work', 'twice = gap * 2') +
  block('table bolts', 'bolt,length (mm)', 'Short,1', 'Long,2');

const BOOK = linkBook([readSheet(TEXT, 'made.md')]);
const indexOf = (name: string) => BOOK.find('made', name)!.index;

test('every given holds its sheet’s own value, each where its kind has its place', () => {
  const { memory } = createFrame(BOOK);
  expect(memory.numbers[indexOf('gap')]).toBe(0.003);
  expect(memory.others[indexOf('names')]).toBe('free');
  expect(memory.others[indexOf('sizes')]).toEqual(Float64Array.of(0.001, 0.002));
  expect(memory.others[indexOf('bolt')]).toMatchObject({ key: 'Long' });
  expect(memory.others[indexOf('bolts')]).toHaveLength(2);
});

test('nothing is worked yet, and what has no value has none', () => {
  const { memory, readings } = createFrame(BOOK);
  expect(memory.numbers[indexOf('twice')]).toBeNaN();
  expect(memory.numbers[indexOf('spare')]).toBeNaN();
  expect([memory.blanks[indexOf('spare')], memory.blanks[indexOf('gap')]]).toEqual([1, 0]);
  const states = ['gap', 'spare', 'bad', 'twice'].map((name) => readings[indexOf(name)]?.state);
  expect(states).toEqual(['value', 'blank', 'failed', undefined]);
});

test('two frames of one book know nothing of each other', () => {
  const [one, other] = [createFrame(BOOK), createFrame(BOOK)];
  one.memory.numbers[indexOf('gap')] = 9;
  expect(other.memory.numbers[indexOf('gap')]).toBe(0.003);
});

test('a book without sheets has a frame without places', () => {
  const { memory, readings } = createFrame(linkBook([]));
  expect([memory.numbers.length, memory.others.length, readings.length]).toEqual([0, 0, 0]);
});
