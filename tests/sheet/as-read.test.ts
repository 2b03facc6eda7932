import { expect, test } from 'vitest';
import { displayAsRead } from '../../src/sheet/as-read.ts';
import { showValue } from '../../src/sheet/show.ts';
import { outcomeOf } from '../../src/sheet/solve.ts';
import { block, makeBook } from './made-book.ts';

const SHEETS = {
  '10-a.md': block(
    'given',
    'height = 11.63 ± 0.05 in "Height" to 0.05',
    'room = 1.20 in "Room" to 1/16',
    'bolt = 9/16 in "Bolt" to 1/16',
    'speeds = [1360, 1700, 1870] rpm "Speeds" to 20',
    'mean = 3.1; 3.2; 3.2 in "Mean" to 0.01',
    'wheel = 25 in "Wheel" to 0.1',
    'car = "Estate" "Car"',
  ),
  '20-b.md': `${block('from 10-a', 'height')}${block('work', 'half = height / 2 as in to 0.05')}`,
};

function show(sheet: string, name: string): string {
  const { book, frame } = makeBook(SHEETS);
  const cell = book.find(sheet, name)!;
  const outcome = outcomeOf(book, frame, cell.index);
  if (outcome.state !== 'value') throw new Error(outcome.state);
  return showValue(outcome.value, cell.kind!, displayAsRead(book, cell, outcome.value)).text;
}

test.each([
  ['height', '11.63\u00a0in'],
  ['room', '1.2\u00a0in'],
  ['speeds', '[1360, 1700, 1870]\u00a0rpm'],
])('%s is shown as finely as it was read: %s', (name, shown) => {
  expect(show('10-a', name)).toBe(shown);
});

test.each([
  ['bolt', '9/16\u00a0in'],
  ['wheel', '25.0\u00a0in'],
  ['mean', '3.17\u00a0in'],
  ['car', 'Estate'],
])('%s has the digits that the sheet asks for: %s', (name, shown) => {
  expect(show('10-a', name)).toBe(shown);
});

test('a reading is shown alike where it is carried to, a result worked from it to its own digits', () => {
  expect(show('20-b', 'height')).toBe('11.63\u00a0in');
  expect(show('20-b', 'half')).toBe('5.80\u00a0in');
});
