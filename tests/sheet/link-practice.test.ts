import { describe, expect, test } from 'vitest';
import { block, makeBook, makeSheet } from './made-book.ts';

const TEXT =
  block(
    'given',
    'finger = 3.2 in from 3 in to 4 in to 0.005',
    'bearing = 3 in from 2 in to 3 in to 1/64',
    'edge = 0.25 in',
    'apart = 1 in from 1 in to 2 in',
  ) + block('work', 'gap = finger - bearing + 0 * edge');

function link(...lines: readonly string[]) {
  const made = makeSheet(
    TEXT + block('practice "The gap"', 'ask gap within 0.001 in "How wide?"', ...lines),
  );
  const linked = made.book.practices[0]!.linked!;
  const vary = linked.vary.map(({ given, ...rest }) => [made.book.cells[given]!.name, rest]);
  return { ...made, linked, vary };
}
const inch = (x: number) => expect.closeTo(x * 0.0254, 12);

test('without a line all givens vary that have a range and that the answer hangs on', () => {
  expect(link().vary).toEqual([
    ['finger', { from: inch(3), to: inch(4), step: inch(0.005) }],
    ['bearing', { from: inch(2), to: inch(3), step: inch(1 / 64) }],
  ]);
});

describe('what varies is told by the sheet', () => {
  test.each([
    ['vary edge from 1/4 in to 1 in', { from: inch(0.25), to: inch(1) }],
    ['vary edge from 1/4 in to 1 in to 0.01', { from: inch(0.25), to: inch(1), step: inch(0.01) }],
    ['vary edge from 0 in to 25.4 mm to 1/8', { from: 0, to: inch(1), step: inch(0.125) }],
    ['vary bearing', { from: inch(2), to: inch(3), step: inch(1 / 64) }],
    ['vary bearing to 0.1', { from: inch(2), to: inch(3), step: inch(0.1) }],
  ])('%s', (line, rest) => {
    expect(link(line).vary).toEqual([[line.split(' ')[1], rest]]);
  });
});

test('within and mistakes are formulas on the sheet’s values', () => {
  const { linked, frame } = link('mistake finger + bearing "Added."');
  expect(linked.within.code.run(frame.memory)).toBeCloseTo(0.0000254, 12);
  expect(linked.mistakes).toMatchObject([{ sentence: 'Added.' }]);
  expect(linked.mistakes[0]!.formula.code.run(frame.memory)).toEqual(inch(6.2));
});

test('a given that was carried in varies where it stands', () => {
  const { book } = makeBook({
    'a.md': block('given', 'p = 2 from 1 to 3'),
    'b.md':
      block('from a', 'p as q') +
      block('work', 'r = q * 2') +
      block('practice "P"', 'ask r within 0.1 "How much?"', 'vary q'),
  });
  expect(book.practices[0]!.linked!.vary).toEqual([{ given: 0, from: 1, to: 3 }]);
});
