import { expect, test } from 'vitest';
import { lastResult, measure, median } from '../../bench/measure.ts';

test.each([
  [[3], 3],
  [[3, 1, 2], 2],
  [[4, 1, 3, 2], 2.5],
  [[1, 1, 1000], 1],
])('the median of %j is %d', (numbers, middle) => {
  expect(median(numbers)).toBe(middle);
});

test('every contender is timed and does its work', () => {
  let worked = 0;
  const contenders = [
    { name: 'one', work: () => (worked += 1) },
    { name: 'two', work: () => 'done' },
  ];
  const medians = measure(contenders, { rounds: 3, roundLength: 0.01 });
  expect([...medians.keys()]).toEqual(['one', 'two']);
  expect(medians.get('one')).toBeGreaterThanOrEqual(0);
  expect(worked).toBeGreaterThan(3);
  expect(lastResult()).toBe('done');
});
