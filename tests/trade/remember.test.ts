import { expect, test } from 'vitest';
import type { Value } from '../../src/language/kind.ts';
import { rememberLast } from '../../src/trade/remember.ts';

function counted(size: number) {
  const asked: (readonly Value[])[] = [];
  const remember = rememberLast(size, (values) => {
    asked.push(values);
    return values.length;
  });
  return { asked, remember };
}

test('the same question is worked once, lists compared by what is in them', () => {
  const { asked, remember } = counted(2);
  expect(remember([1, Float64Array.of(2, 3)])).toBe(2);
  expect(remember([1, Float64Array.of(2, 3)])).toBe(2);
  expect(asked).toHaveLength(1);
});

test.each<[string, readonly Value[]]>([
  ['another number', [2, Float64Array.of(2, 3)]],
  ['another number in a list', [1, Float64Array.of(2, 4)]],
  ['a longer list', [1, Float64Array.of(2, 3, 4)]],
  ['a value more', [1, Float64Array.of(2, 3), 4]],
  ['a number for a list', [1, 2]],
])('%s is another question', (_, values) => {
  const { asked, remember } = counted(2);
  remember([1, Float64Array.of(2, 3)]);
  remember(values);
  expect(asked).toHaveLength(2);
});

test('a list that is changed afterwards is another question', () => {
  const { asked, remember } = counted(2);
  const list = Float64Array.of(2, 3);
  remember([list]);
  list[0] = 9;
  remember([list]);
  expect(asked).toHaveLength(2);
});

test('what is no number is itself', () => {
  const { asked, remember } = counted(1);
  remember([Number.NaN]);
  remember([Number.NaN]);
  expect(asked).toHaveLength(1);
});

test('no more than the last few are kept', () => {
  const { asked, remember } = counted(2);
  for (const value of [1, 2, 3, 1]) remember([value]);
  expect(asked).toHaveLength(4);
});
