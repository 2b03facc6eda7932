import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createFrame } from '../../src/sheet/create-frame.ts';
import { enterGiven } from '../../src/sheet/enter.ts';
import { copyFrame } from '../../src/sheet/frame.ts';
import { evaluate, explainCell, outcomeOf, solve, valueOfCell } from '../../src/sheet/solve.ts';
import { block, makeBook, makeSheet, numberOf } from './made-book.ts';

const MADE = makeBook({
  'made.md':
    block('given', 'a = 2', 'open = blank', 'words = "free"', 'sizes = [1, 2]', 'bad = 3 furlong') +
    block(
      'work',
      'twice = a * 2',
      'isso = a > 1',
      'isnot = a > 9',
      'each = sizes * a',
      'none = 1 / (a - 2)',
      'after = none + 1',
      'waits = open + 1',
      'wrong = bad + 1',
    ) +
    block('table bolts', 'bolt,length (mm)', 'Short,1'),
  'other.md': block('from made', 'twice', 'none', 'open'),
});
const outcome = (name: string) => MADE.outcome(name);

describe('what became of a cell', () => {
  test.each([
    ['a', { state: 'value', value: 2 }],
    ['twice', { state: 'value', value: 4 }],
    ['isso', { state: 'value', value: true }],
    ['isnot', { state: 'value', value: false }],
    ['each', { state: 'value', value: Float64Array.of(2, 4) }],
    ['words', { state: 'value', value: 'free' }],
    ['bolts', { state: 'value', value: [{ key: 'Short' }] }],
    ['other/twice', { state: 'value', value: 4 }],
    ['open', { state: 'blank' }],
    ['other/open', { state: 'blank' }],
    ['none', { state: 'failed', problem: { code: 'division-by-zero', cell: 'none' } }],
    ['bad', { state: 'failed', problem: { code: 'unknown-unit' } }],
    ['after', { state: 'waiting', problem: { waitsFor: 'none' } }],
    ['waits', { state: 'waiting', problem: { waitsFor: 'open' } }],
    ['wrong', { state: 'waiting', problem: { waitsFor: 'bad' } }],
    ['other/none', { state: 'waiting', problem: { waitsFor: 'none' } }],
  ])('%s', (name, found) => {
    expect(outcome(name)).toMatchObject(found);
  });
});

test('the value of a cell is the one in the memory, or none', () => {
  const value = (name: string) => valueOfCell(MADE.cell(name), MADE.frame);
  expect([value('twice'), value('isso'), value('words')]).toEqual([4, true, 'free']);
  expect([value('none'), value('open'), value('bad')]).toEqual([undefined, undefined, undefined]);
});

test('to solve again changes nothing', () => {
  const before = copyFrame(MADE.frame);
  solve(MADE.book, MADE.frame);
  expect(MADE.frame).toEqual(before);
});

test('one cell is worked from those that it reads, as they stand', () => {
  const { book, frame, cell, enter } = makeSheet(
    block('given', 'a = 2') + block('work', 'b = a * 2', 'c = b * 2'),
  );
  enter('a', '5');
  evaluate(book, frame, cell('b').index);
  const numbers = ['b', 'c'].map((name) => frame.memory.numbers[cell(name).index]);
  expect(numbers).toEqual([10, 8]);
});

test('of the cells that are named each is worked, in that order, and no other', () => {
  const { book, frame } = makeBook({
    'made.md': block('given', 'a = 2') + block('work', 'b = a + 1', 'c = b + 1', 'd = a * 2'),
  });
  solve(book, frame);
  const [a, b, c, d] = ['a', 'b', 'c', 'd'].map((name) => book.find('made', name)!.index);
  frame.memory.numbers[a!] = 5;
  solve(book, frame, [b!, c!]);
  expect([b, c, d].map((index) => frame.memory.numbers[index!])).toEqual([6, 7, 4]);
});

test('a formula that belongs to no cell is explained in the name of what it belongs to', () => {
  const { book, frame } = makeSheet(block('given', 'a = 0') + block('check', 'a at least 1 / a'));
  const formula = book.checks[0]!.least!;
  expect(explainCell(book, frame, { sheet: 'made', name: 'my check' }, formula)).toMatchObject({
    code: 'division-by-zero',
    message: 'division by zero: a is 0',
    cell: 'my check',
    place: { line: 5, column: 12 },
  });
});

test('any way of entering the givens one after another comes to what solving at once gives', () => {
  const text =
    block('given', 'a = 1', 'b = 2', 'c = blank') +
    block('work', 'd = a + b', 'e = c otherwise d', 'f = e / a', 'g = [d, f]');
  const typed = fc.array(
    fc.tuple(fc.constantFrom('a', 'b', 'c'), fc.constantFrom('0', '3', '', 'x', '-1')),
    { maxLength: 6 },
  );
  fc.assert(
    fc.property(typed, (entries) => {
      const { book, cell } = makeSheet(text);
      const step = createFrame(book);
      solve(book, step);
      for (const [name, entry] of entries) {
        enterGiven(book, step, cell(name).index, { text: entry });
        solve(book, step);
      }
      const atOnce = createFrame(book);
      for (const [name, entry] of new Map(entries))
        enterGiven(book, atOnce, cell(name).index, { text: entry });
      solve(book, atOnce);
      for (const { index } of book.cells)
        expect(outcomeOf(book, step, index)).toEqual(outcomeOf(book, atOnce, index));
    }),
    { numRuns: 60 },
  );
});

test('the order of the lines makes no difference', () => {
  const lines = ['b = a + 1', 'c = b * a', 'd = c - b'];
  const value = (order: readonly string[]) =>
    numberOf(makeSheet(block('work', ...order) + block('given', 'a = 3')), 'd');
  fc.assert(
    fc.property(fc.shuffledSubarray(lines, { minLength: 3 }), (order) => {
      expect(value(order)).toBe(8);
    }),
  );
});
