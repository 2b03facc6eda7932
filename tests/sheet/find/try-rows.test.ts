import { expect, test } from 'vitest';
import { tryRows } from '../../../src/sheet/find/try-rows.ts';
import { givenOf, makeGearing } from './made-gearing.ts';

const MADE = makeGearing();
const RPM = Math.PI / 30;

function rows(given: string, result: string, target: number, element?: number) {
  const tried = tryRows(
    MADE.book,
    MADE.frame,
    givenOf(MADE, given),
    MADE.cell(result),
    target * RPM,
    element,
  );
  return tried.map(({ row, result: number }) => [row, Math.round(number / RPM)]);
}

test('each row is tried, the nearest to the target first', () => {
  // By hand: 1000 rpm × 3.25 × 1 and × 0.8.
  expect(rows('ratios', 'top', 3000)).toEqual([
    ['Four', 3250],
    ['Five', 2600],
  ]);
  expect(rows('ratios', 'top', 2500)[0]).toEqual(['Five', 2600]);
});

test('a row without the element that was asked for comes last, without a number', () => {
  expect(rows('ratios', 'speeds', 3250, 4)).toEqual([
    ['Five', 2600],
    ['Four', Number.NaN],
  ]);
});

test('the frame stays as it was', () => {
  const before = MADE.frame.memory.numbers.slice();
  rows('ratios', 'top', 3000);
  expect(MADE.frame.memory.numbers).toEqual(before);
  expect(MADE.outcome('top')).toMatchObject({ value: expect.closeTo(2600 * RPM, 9) });
});

test('a given that is not picked from a table has no rows', () => {
  expect(rows('wheel', 'top', 3000)).toEqual([]);
});
