import { describe, expect, test } from 'vitest';
import type { ChartData } from '../../src/sheet/chart-data.ts';
import { sweepChart } from '../../src/sheet/sweep.ts';
import type { System } from '../../src/units/unit.ts';
import { block, makeBook, makeSheet } from './made-book.ts';

const GIVENS = block(
  'given',
  'wear = 1 mm "Wear" from 0 mm to 2 mm',
  'gap = 4 mm "Gap"',
  'sizes = [1, 2] mm "Sizes"',
  'names = "unused"',
  'open = blank mm',
);
const WORK = block(
  'work',
  'left = gap - wear "Gap left" as mm',
  'each = sizes + wear "Each" as mm',
  'inverse = 1 mm^2 / (wear - 1 mm) "Inverse" as mm',
  'which = ordinals(sizes)',
);

function sweep(lines: readonly string[], system?: System, entries = {}): ChartData {
  const { book, frame } = makeSheet(GIVENS + WORK + block('chart "C"', ...lines), entries);
  const [chart] = book.charts;
  const data = sweepChart(book, frame, chart!.statement, 'made', system);
  if ('code' in data) throw new Error(data.message);
  return data;
}

test('the sheet is worked at each place of the range, in the units of the axes', () => {
  const { series, x, y, now } = sweep(['left over wear from 0 mm to 2 mm']);
  expect(x).toEqual({ label: 'Wear', unit: 'mm', from: 0, to: 2 });
  expect(y).toMatchObject({ label: 'Gap left', unit: 'mm' });
  expect(now).toBeCloseTo(1, 12);
  expect(series).toHaveLength(1);
  expect(series[0]!.now).toBeCloseTo(3, 12);
  for (const [at, value] of series[0]!.points) expect(value).toBeCloseTo(4 - at, 9);
});

test('the units are those of the page where it has its own', () => {
  const { x, y, series, now } = sweep(['left over wear from 0 mm to 2 mm'], 'inch-pound');
  expect([x.unit, y.unit]).toEqual(['in', 'in']);
  expect([x.to, now]).toEqual([expect.closeTo(2 / 25.4, 12), expect.closeTo(1 / 25.4, 12)]);
  expect(series[0]!.points[0]![1]).toBeCloseTo(4 / 25.4, 12);
});

test('each element of a list is a line, named by its place or by the sheet', () => {
  const labels = (line: string) => sweep([line]).series.map(({ label }) => label);
  expect(labels('each over wear from 0 mm to 2 mm')).toEqual(['1', '2']);
  expect(labels('each over wear from 0 mm to 2 mm a line for each which')).toEqual(['1st', '2nd']);
  expect(labels('left, each over wear from 0 mm to 2 mm')).toEqual(['Gap left', '1', '2']);
});

test('words of the chart go before those of the values', () => {
  const { x, y } = sweep(['left over wear from 0 mm to 2 mm x "Lost" y "Kept"']);
  expect([x.label, y.label]).toEqual(['Lost', 'Kept']);
});

test('where there is no value there is a gap, and the axis heeds it not', () => {
  const { series, y } = sweep(['inverse over wear from 0 mm to 2 mm']);
  expect(series[0]!.points.some(([, value]) => Number.isNaN(value))).toBe(true);
  expect(Number.isFinite(y.from) && Number.isFinite(y.to)).toBe(true);
  expect(series[0]!.now).toBeUndefined();
});

test('marks and limits stand in the units of their axes; one without a value is left out', () => {
  const { marks, limits } = sweep([
    'left over wear from 0 mm to 2 mm',
    'mark gap / 2 "Half" on y',
    'mark wear "Here" on x',
    'mark open "Not yet" on x',
    'limits 1 mm to 3 mm "Holds"',
    'limits open to 3 mm "Not yet"',
  ]);
  expect(marks).toEqual([
    { axis: 'y', value: expect.closeTo(2, 12), label: 'Half' },
    { axis: 'x', value: expect.closeTo(1, 12), label: 'Here' },
  ]);
  expect(limits).toEqual([
    { least: expect.closeTo(1, 12), most: expect.closeTo(3, 12), label: 'Holds' },
  ]);
});

test('a given that is blank is swept all the same, and has no present place', () => {
  const { series, now } = sweep(['left over wear from 0 mm to 2 mm'], undefined, { wear: '' });
  expect(now).toBeUndefined();
  expect(series[0]!.now).toBeUndefined();
  expect(series[0]!.points[0]![1]).toBeCloseTo(4, 12);
});

describe('the height of a chart', () => {
  test.each([
    ['from nothing where the lines come near it', 'gap + wear - wear + 3 * wear', 0],
    ['from the lowest where they do not', '100 * gap + wear', 400],
    ['from below nothing where they go there', 'wear - gap', -4],
  ])('%s', (_, formula, from) => {
    const { book, frame } = makeSheet(
      GIVENS +
        block('work', `y = ${formula} as mm`) +
        block('chart "C"', 'y over wear from 0 mm to 2 mm'),
    );
    const data = sweepChart(book, frame, book.charts[0]!.statement, 'made') as ChartData;
    expect(data.y.from).toBeCloseTo(from, 9);
  });
});

describe('no chart', () => {
  test.each([
    [
      'where its range has no value yet',
      'left over wear from 0 mm to open',
      'open, which is blank',
    ],
    [
      'where its range has an error',
      'left over wear from 0 mm to 1 mm^2 / (gap - gap)',
      'division by zero',
    ],
    ['where it was not linked', 'left over wear from 0 mm to 2 s', 'needs length, not time'],
  ])('%s', (_, line, message) => {
    const { book, frame } = makeSheet(GIVENS + WORK + block('chart "C"', line));
    const data = sweepChart(book, frame, book.charts[0]!.statement, 'made');
    expect(data).toMatchObject({ message: expect.stringContaining(message) });
  });
});

test('ends that have passed each other are put in order', () => {
  const { x, series } = sweep(['left over wear from gap to wear'], undefined);
  expect([x.from, x.to]).toEqual([expect.closeTo(1, 12), expect.closeTo(4, 12)]);
  expect(series[0]!.points[0]![0]).toBeLessThan(series[0]!.points.at(-1)![0]);
});

test('a given of another sheet is swept through all that hangs on it; the frame stays', () => {
  const { book, frame } = makeBook({
    'a.md': block('given', 'p = 2 "On the first sheet"') + block('work', 'q = p * 2'),
    'b.md':
      block('from a', 'p', 'q') +
      block('work', 'r = q + p') +
      block('chart "C"', 'r over p from 0 to 4'),
  });
  const before = structuredClone(frame);
  const data = sweepChart(book, frame, book.charts[0]!.statement, 'b') as ChartData;
  expect(data.series[0]!.points.at(-1)).toEqual([4, 12]);
  expect(data.x.label).toBe('On the first sheet');
  expect(frame).toEqual(before);
});
