import { expect, test } from 'vitest';
import { elementNames } from '../../src/sheet/element-names.ts';
import { block, makeSheet } from './made-book.ts';

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
