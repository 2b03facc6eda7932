import { expect, test } from 'vitest';
import { generateSheet, lastReading } from '../../bench/generated-sheet.ts';
import { openBook, openSheet } from '../../bench/opened-sheet.ts';
import { outcomeOf } from '../../src/sheet/solve.ts';

test.each([10, 100, 1000])(
  'a generated sheet of %d cells is sound and all of it has a value',
  (n) => {
    const { book, frame } = openSheet(generateSheet(n), 'generated.md');
    expect(book.problems).toEqual([]);
    expect(book.cells).toHaveLength(n);
    const states = new Set(book.order.map((index) => outcomeOf(book, frame, index).state));
    expect([...states]).toEqual(['value']);
  },
);

test('few cells hang on the reading whose change is timed', () => {
  const { book, frame, change } = openSheet(generateSheet(100), 'generated.md');
  const total = book.cells.findIndex(({ name }) => name === 'total_9');
  const turn = change(lastReading(100), ['3.2', '3.3']);
  turn();
  const first = frame.memory.numbers[total];
  turn();
  expect(frame.memory.numbers[total]).not.toBe(first);
  turn();
  turn();
  expect(frame.memory.numbers[total]).not.toBe(first);
  turn();
  expect(frame.memory.numbers[total]).toBe(first);
});

test('opening alone works nothing yet', () => {
  expect(openBook(generateSheet(10), 'generated.md').cells).toHaveLength(10);
});
