import { expect, test } from 'vitest';
import { block, makeBook, makeSheet } from './made-book.ts';

const TEXT =
  block('given', 'axle = 3.5 from 2 to 5', 'tyre = 25 in') +
  block('work', 'engine = axle * 1000 rpm');
const link = (line: string) => {
  const made = makeSheet(TEXT + block('find', line));
  const [find] = made.book.finds;
  return { ...made, find: find!, linked: find!.linked };
};

test('a question has its given, its result, its target, and what it is searched over', () => {
  const { linked, cell, frame } = link(
    'tyre so that engine is 2 * 1000 rpm from 20 in to 1 m near [24 in, 26 in]',
  );
  const value = (formula: { code: { run(memory: typeof frame.memory): unknown } }) =>
    formula.code.run(frame.memory);
  expect(linked!.given).toBe(cell('tyre').index);
  expect(value(linked!.target)).toBeCloseTo((2000 * 2 * Math.PI) / 60, 9);
  expect([value(linked!.from!), value(linked!.to!)]).toEqual([expect.closeTo(0.508, 12), 1]);
  expect(value(linked!.near!)).toHaveLength(2);
});

test('without a range, the given’s own serves', () => {
  const { linked } = link('axle so that engine is 2000 rpm');
  expect(linked).not.toHaveProperty('from');
  expect(linked).not.toHaveProperty('near');
});

test('a given that was carried in is found where it stands, and its range with it', () => {
  const { book } = makeBook({
    'a.md': block('given', 'axle = 3.5 from 2 to 5'),
    'b.md': block('from a', 'axle as ratio') + block('find', 'ratio so that ratio * 2 is 7'),
  });
  expect(book.problems).toEqual([]);
  expect(book.finds[0]).toMatchObject({ sheet: 'b', linked: { given: 0 } });
});

test('a question that cannot be linked has its problem, at its place', () => {
  const { find } = link('axle so that engine is 60 mph');
  expect(find.linked).toBeUndefined();
  expect(find.problem).toMatchObject({ code: 'wrong-dimension', place: { line: 9, column: 24 } });
});
