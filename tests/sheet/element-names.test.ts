import { expect, test } from 'vitest';
import { elementNames } from '../../src/sheet/element-names.ts';
import { block, makeBook, makeSheet } from './made-book.ts';

const SHEET = [
  block('given', 'x = 1', 'ratios = [3, 2, 1]', 'open = blank list'),
  block('work', 'gear = ordinals(ratios)', 'speeds = ratios * x', 'none = open * 2'),
].join('\n');
const OTHER = block('work', 'places = ordinals(speeds)');
const CHART = block('chart "Speeds"', 'speeds over x from 0 to 5 a line for each places');

function names(source: string, name: string): readonly string[] | undefined {
  const made = makeSheet(source);
  return elementNames(made.book, made.frame, made.cell(name));
}

test('the one list of words that is as long names the elements', () => {
  expect(names(SHEET, 'speeds')).toEqual(['1st', '2nd', '3rd']);
});

test('of several lists of words a chart tells which names them', () => {
  expect(names(SHEET + OTHER, 'speeds')).toBeUndefined();
  expect(names(SHEET + OTHER + CHART, 'speeds')).toEqual(['1st', '2nd', '3rd']);
});

test('what names the lines of a chart names other lists of the sheet before mere words do', () => {
  const more = block('work', 'halves = ratios / 2', 'parts = ["a", "b", "c"]');
  expect(names(SHEET + OTHER + more, 'halves')).toBeUndefined();
  expect(names(SHEET + OTHER + more + CHART, 'halves')).toEqual(['1st', '2nd', '3rd']);
});

test('what is no list, or has no value, has no elements to name', () => {
  expect(names(SHEET, 'x')).toBeUndefined();
  expect(names(SHEET, 'none')).toBeUndefined();
});

const TABLE = [
  block('table gates "Gates"', 'gear,back (in)', '1st,2', 'R,3', 'N,0'),
  block('work', 'lean = gates.back / 2', 'sweep = lean * 3', 'tips = [1 in, 2 in, 3 in]'),
].join('\n');

test('a list that is merely as long does not name what comes from another one', () => {
  const tubes = block('given', 'stock = [1, 2, 3]') + block('work', 'tube = ordinals(stock)');
  expect(
    names(
      tubes + block('given', 'ratios = [3, 2, 1]') + block('work', 'runs = ratios * 2'),
      'runs',
    ),
  ).toBeUndefined();
});

test('the rows of the table name what is worked from its columns', () => {
  expect(names(TABLE, 'sweep')).toEqual(['1st', 'R', 'N']);
  expect(names(TABLE, 'tips')).toBeUndefined();
});

test('a list of words names the rows before their keys do', () => {
  expect(names(TABLE + block('work', 'place = ordinals(lean)'), 'sweep')).toEqual([
    '1st',
    '2nd',
    '3rd',
  ]);
});

test('a list that is picked from a table is not named after the rows of the table', () => {
  const picked = [
    block('table sets "Sets"', 'set,ratios', 'Wide,"[3, 2]"', 'Close,"[2, 1]"'),
    block('given', 'ratios = pick "Wide" from sets.ratios'),
    block('work', 'runs = ratios * 2'),
  ].join('\n');
  expect(names(picked, 'runs')).toBeUndefined();
});

test('words and values that are both put together where they stand belong together', () => {
  const pair = block('work', 'state = ["before", "after"]', 'speeds = [1 rpm, 2 rpm]');
  expect(names(pair, 'speeds')).toEqual(['before', 'after']);
});

test('what is carried to another sheet keeps the names of the sheet that it comes from', () => {
  const { book, frame } = makeBook({
    '10-a.md': SHEET,
    '20-b.md': block('from 10-a', 'ratios') + block('work', 'runs = ratios * 2'),
    '30-c.md': block('from 10-a', 'ratios', 'gear') + block('work', 'runs = ratios * 2'),
  });
  for (const sheet of ['20-b', '30-c'])
    expect(elementNames(book, frame, book.find(sheet, 'runs')!)).toEqual(['1st', '2nd', '3rd']);
});

test('readings in the order of a list are named after it once they are set against it', () => {
  const readings = block('given', 'found = [31, 19, 10]') + block('work', 'put_right = found / 10');
  expect(names(SHEET + readings, 'put_right')).toBeUndefined();
  const against = block('work', 'off = put_right / ratios - 1');
  expect(names(SHEET + readings + against, 'put_right')).toEqual(['1st', '2nd', '3rd']);
});
