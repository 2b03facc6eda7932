import { expect, test } from 'vitest';
import type { GivenCell } from '../../src/sheet/cell.ts';
import { createStanding } from '../../src/sheet/standing.ts';
import { block, makeSheet } from './made-book.ts';

const MADE = makeSheet(
  block('given', 'gap = 3 ± 0.1 mm', 'open = blank mm') +
    block('work', 'twice = gap * 2', 'lost = open * 2') +
    block('check', 'gap at least 1 mm + twice', 'gap at least open'),
);
const standing = createStanding(MADE.book, MADE.frame, {
  system: 'metric',
  isEntered: ({ name }) => name === 'gap',
});
const index = (name: string) => MADE.cell(name).index;

test('a standing gives what became of each cell, and how sure it is', () => {
  expect(standing.outcomeOf(index('twice'))).toMatchObject({ state: 'value', value: 0.006 });
  expect(standing.outcomeOf(index('lost'))).toMatchObject({ state: 'waiting' });
  expect(standing.spreadOf(index('twice'))[0]!.worst.to).toBeCloseTo(0.0062, 12);
  expect(standing.spreadOf(index('lost'))).toEqual([]);
});

test('a standing works out any formula on the values as they stand', () => {
  const [first, second] = MADE.book.checks;
  expect(standing.workOut(first!.least!)).toBeCloseTo(0.007, 12);
  expect(standing.workOut(second!.least!)).toBeNaN();
});

test('a standing hands on its frame, its units, and who entered what', () => {
  expect([standing.frame(), standing.system()]).toEqual([MADE.frame, 'metric']);
  expect(['gap', 'open'].map((name) => standing.isEntered(MADE.cell(name) as GivenCell))).toEqual([
    true,
    false,
  ]);
});

test('without units of its own a standing shows those of the sheet', () => {
  const plain = createStanding(MADE.book, MADE.frame, { isEntered: () => false });
  expect(plain.system()).toBeUndefined();
});
