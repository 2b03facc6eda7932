import { expect, test } from 'vitest';
import { warningsOf } from '../../src/sheet/warnings.ts';
import { block, makeSheet } from './made-book.ts';

/** Above 150 mph the formula for road load says itself that it is not good for so much. */
const LINES = [
  'angle = slope * 2 valid when angle_limit > slope "Only for small angles."',
  'after = angle + 1 deg',
  'speed_load = road_load(speed, 100 N, 0.5 kg/m, 40 m/s)',
  'choice = if slope > 0 deg then 1 N else road_load(speed, 100 N, 0.5 kg/m, 40 m/s)',
];

function warnings(name: string, slope: string, speed = '20 m/s') {
  const { book, frame, cell } = makeSheet(
    block('given', 'slope = 3 deg', 'angle_limit = 6 deg', 'speed = 20 m/s') +
      block('work', ...LINES),
    { slope, speed },
  );
  return warningsOf(book, frame, cell(name).index);
}

test('a result inside of what its formula is good for has none', () => {
  expect(warnings('angle', '3 deg')).toEqual([]);
});

test('outside of it, the sheet’s own sentence; the number stands all the same', () => {
  expect(warnings('angle', '9 deg')).toEqual(['Only for small angles.']);
});

test('a condition that has no value warns of nothing', () => {
  expect(warnings('angle', '')).toEqual([]);
});

test('what hangs on such a result does not warn again', () => {
  expect(warnings('after', '9 deg')).toEqual([]);
});

test('a function of the trade says so itself', () => {
  expect(warnings('speed_load', '3 deg')).toEqual([]);
  expect(warnings('speed_load', '3 deg', '200 m/s')).toHaveLength(1);
});

test('the branch that is not taken says nothing', () => {
  expect(warnings('choice', '3 deg', '200 m/s')).toEqual([]);
});

test('a given has none', () => {
  expect(warnings('slope', '9 deg')).toEqual([]);
});

test('a formula with an error has none', () => {
  const { book, frame, cell } = makeSheet(block('work', 'wrong = 1 mm + 1 s'));
  expect(warningsOf(book, frame, cell('wrong').index)).toEqual([]);
});
