import { expect, test } from 'vitest';
import { compareResults } from '../../../src/sheet/compare/compare.ts';
import { block, type MadeBook, makeBook } from '../made-book.ts';

const SHEETS = {
  'made.md': [
    block('given', 'axle = 3.25 "Axle" to 0.01', 'spare = blank mm "Spare"'),
    block('work', 'speed = 600 rpm * axle as rpm to 10', 'room = spare + 1 mm', 'x = 2 * 2'),
  ].join('\n'),
};

function columns(...axles: readonly string[]): readonly MadeBook[] {
  return axles.map((axle) => makeBook(SHEETS, { axle }));
}

function compare(...axles: readonly string[]) {
  const [first, ...others] = columns(...axles);
  const cells = ['speed', 'room', 'x'].map((name) => first!.cell(name).index);
  return compareResults(
    first!.book,
    [first!, ...others].map(({ frame }) => frame),
    cells,
  );
}

test('each result stands in every column with its difference from the first', () => {
  const [speed] = compare('3.25', '3.73');
  const texts = speed!.columns.map(({ text }) => text.replaceAll('\u00a0', ' '));
  expect(texts).toEqual(['1950 rpm', '2240 rpm']);
  expect(speed!.columns[0]!.difference).toBeUndefined();
  // By hand: 600 × 3.73 = 2238, 288 more than 1950; 288 / 1950 = 14.8 %.
  expect(speed!.columns[1]!.difference!.replaceAll('\u00a0', ' ')).toBe('+290 rpm, 15 % more');
  expect(speed!.differs).toBe(true);
});

test('a result that is the same everywhere does not differ', () => {
  const [, room, x] = compare('3.25', '3.73');
  expect(x!.differs).toBe(false);
  expect(x!.columns[1]!.difference).toBe('the same');
  expect(room!.differs).toBe(false);
  expect(room!.columns[1]).toMatchObject({
    difference: undefined,
    text: expect.stringMatching(/spare/),
  });
});

test('a column that could not be worked says so and spoils no other', () => {
  const [made] = columns('3.25');
  const speed = made!.cell('speed').index;
  const [compared] = compareResults(made!.book, [made!.frame, undefined], [speed]);
  expect(compared!.columns[1]).toEqual({
    outcome: undefined,
    text: 'not worked',
    difference: undefined,
  });
});
