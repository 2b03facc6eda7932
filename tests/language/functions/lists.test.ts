import { ascending, max, min, sum } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LISTS, ordinal } from '../../../src/language/functions/lists.ts';
import type { Value } from '../../../src/language/kind.ts';
import { refusalOf, runFunction } from '../../support/run-function.ts';

const find = (name: string) => LISTS.find((declaration) => declaration.name === name)!;
const run = (name: string, ...values: Value[]) => runFunction(find(name), ...values);
const list = (...numbers: readonly number[]) => Float64Array.from(numbers);

describe('one value of a list', () => {
  test.each([
    ['min', [list(3, 1, 2)], 1],
    ['max', [list(3, 1, 2)], 3],
    ['min', [3, list(5, 2), 4], 2],
    ['max', [list(), 3], 3],
    ['min', [list(), 3], 3],
    ['sum', [list(1, 2, 3)], 6],
    ['sum', [list()], 0],
    ['count', [list(1, 2)], 2],
    ['count', [['a']], 1],
    ['count', [list()], 0],
    ['first', [list(5, 6)], 5],
    ['first', [['a', 'b']], 'a'],
    ['last', [list(5, 6)], 6],
    ['last', [['a', 'b']], 'b'],
    ['item', [list(5, 6, 7), 3], 7],
    ['item', [['a', 'b'], 1], 'a'],
    ['largest_up_to', [list(1, 4, 9), 5], 4],
    ['largest_up_to', [list(9, 1, 4), 4], 4],
    ['smallest_from', [list(9, 1, 4), 5], 9],
    ['smallest_from', [list(1, 4, 9), 1], 1],
  ] as const)('%s of %j is %j', (name, values, value) => {
    expect(run(name, ...(values as readonly Value[]))).toBe(value);
  });
});

describe('a list of a list', () => {
  test.each([
    ['without_first', [list(5, 6, 7)], list(6, 7)],
    ['without_first', [list(5)], list()],
    ['without_first', [['a', 'b']], ['b']],
    ['without_last', [list(5, 6, 7)], list(5, 6)],
    ['without_last', [['a', 'b']], ['a']],
    ['descending', [list(1, 3, 2)], list(3, 2, 1)],
    ['ascending', [list(3, 1, 2)], list(1, 2, 3)],
    ['ascending', [list()], list()],
    ['ordinals', [list(3.5, 2)], ['1st', '2nd']],
    ['ordinals', [list()], []],
    ['ordinals', [['a', 'b', 'c']], ['1st', '2nd', '3rd']],
  ] as const)('%s of %j is %j', (name, values, found) => {
    expect(run(name, ...(values as readonly Value[]))).toEqual(found);
  });
});

describe('what has no value', () => {
  test.each([
    ['min', [list()], 'the list is empty'],
    ['max', [list(), list()], 'the list is empty'],
    ['first', [list()], 'the list is empty'],
    ['last', [[]], 'the list is empty'],
    ['without_first', [list()], 'the list is empty'],
    ['without_last', [list()], 'the list is empty'],
    ['item', [list(1, 2), 3], 'there is no element 3 in a list of 2'],
    ['item', [list(1, 2), 0], 'there is no element 0 in a list of 2'],
    ['item', [list(1, 2), 1.5], 'there is no element 1.5 in a list of 2'],
    ['largest_up_to', [list(4, 9), 3], 'every element is above the limit'],
    ['smallest_from', [list(4, 9), 10], 'every element is below the limit'],
  ] as const)('%s of %j: %s', (name, values, sentence) => {
    expect(refusalOf(find(name), ...(values as readonly Value[]))).toBe(sentence);
  });
});

test.each([
  [1, '1st'],
  [2, '2nd'],
  [3, '3rd'],
  [4, '4th'],
  [10, '10th'],
  [11, '11th'],
  [12, '12th'],
  [13, '13th'],
  [21, '21st'],
  [22, '22nd'],
  [101, '101st'],
  [111, '111th'],
  [113, '113th'],
])('place %i is called %s', (n, name) => {
  expect(ordinal(n)).toBe(name);
});

test('sorting, adding and choosing are those of a library, and leave the list as it was', () => {
  const numbers = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1, maxLength: 60 });
  fc.assert(
    fc.property(numbers, (given) => {
      const held = list(...given);
      const sorted = given.toSorted(ascending);
      expect(run('ascending', held)).toEqual(list(...sorted));
      expect(run('descending', held)).toEqual(list(...sorted.toReversed()));
      expect([run('sum', held), run('min', held), run('max', held)]).toEqual([
        sum(given),
        min(given),
        max(given),
      ]);
      expect(held).toEqual(list(...given));
    }),
  );
});
