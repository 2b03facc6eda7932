import { describe, expect, test } from 'vitest';
import { block, makeBook, makeSheet } from './made-book.ts';

const TEXT =
  block('given', 'wear = 1 mm', 'ratio = 3', 'time = 2 s') +
  block('work', 'left = wear * ratio as in', 'each = [1, 2] * wear', 'names = ordinals(each)');

function link(...lines: readonly string[]) {
  const { book } = makeSheet(TEXT + block('chart "C"', ...lines));
  const [chart] = book.charts;
  return { book, chart: chart!, linked: chart!.linked };
}
const CURVE = 'left over wear from 0 mm to 2 mm';

test('a chart knows its given, its results, and the units of its axes', () => {
  const { book, linked } = link('left, each over wear from 0 mm to 2 mm a line for each names');
  const nameOf = (index: number) => book.cells[index]!.name;
  expect(linked!.results.map(nameOf)).toEqual(['left', 'each']);
  expect([nameOf(linked!.over), nameOf(linked!.lines!)]).toEqual(['wear', 'names']);
  expect([linked!.xUnit?.symbol, linked!.yUnit?.symbol]).toEqual(['mm', 'in']);
});

test('the unit of the chart goes before that of the result; a plain number has none', () => {
  expect(link('left as mm over wear from 0 mm to 2 mm').linked!.yUnit!.symbol).toBe('mm');
  expect(link('ratio over ratio from 1 to 2').linked).not.toHaveProperty('yUnit');
});

describe('the axis of a mark', () => {
  test.each([
    ['that of its kind', 'mark 3 s "Here"', 'left over time from 1 s to 2 s', 'x'],
    ['that of its kind', 'mark 3 mm "Here"', 'left over time from 1 s to 2 s', 'y'],
    ['up, where both are alike', 'mark 3 mm "Here"', CURVE, 'y'],
    ['as the sheet says, where both are alike', 'mark 3 mm "Here" on x', CURVE, 'x'],
  ])('is %s', (_, mark, curve, axis) => {
    expect(link(curve, mark).linked!.marks).toMatchObject([{ axis, label: 'Here' }]);
  });
});

test('a given that was carried over two sheets is swept where it stands', () => {
  const { book } = makeBook({
    'a.md': block('given', 'p = 2'),
    'b.md': block('from a', 'p as q'),
    'c.md': block('from b', 'q as r') + block('chart "C"', 'r over r from 0 to 4'),
  });
  expect(book.charts[0]!.linked!.over).toBe(book.find('a', 'p')!.index);
});

test('a chart that cannot be linked has its problem, at its place, and nothing else', () => {
  const { chart, book } = link('left over wear from 0 s to 2 mm');
  expect(chart.linked).toBeUndefined();
  expect(chart.problem).toMatchObject({ code: 'wrong-dimension', place: { line: 12, column: 21 } });
  expect(book.problems).toEqual([chart.problem]);
});
