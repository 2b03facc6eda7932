import { expect, test } from 'vitest';
import { benchGrowth } from '../../bench/growing.ts';

test('a row for each size and one for the growth, prepared afresh for each opening', () => {
  const prepared: number[] = [];
  const rows = benchGrowth({
    what: 'counting',
    sizes: [10, 1000],
    of: 'steps',
    work(size) {
      prepared.push(size);
      return () => {
        let sum = 0;
        for (let i = 0; i < size; i += 1) sum += Math.sqrt(i);
        return sum;
      };
    },
    bar: 3,
    rounds: 3,
    openings: 2,
  });
  expect(prepared).toEqual([10, 1000, 10, 1000]);
  expect(rows.map(({ what }) => what)).toEqual([
    'counting, 10 steps',
    'counting, 1000 steps',
    'counting: exponent of growth',
  ]);
  expect(rows.at(-1)).toMatchObject({ bar: '≤ 3', met: true });
});
