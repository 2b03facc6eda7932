import { expect, test } from 'vitest';
import { upstreamOf } from '../../src/sheet/upstream.ts';

const cells = (...inputs: readonly (readonly number[])[]) =>
  inputs.map((each) => ({ inputs: each }));

test.each([
  ['of nothing', [[], [0]], [], []],
  ['of a cell that reads nothing', [[], [0]], [0], [0]],
  ['of the end of a chain', [[], [0], [1]], [2], [0, 1, 2]],
  ['of the middle of a chain', [[], [0], [1]], [1], [0, 1]],
  ['of the foot of a diamond', [[], [0], [0], [1, 2]], [3], [0, 1, 2, 3]],
  ['of two cells apart', [[], [], [0], [1]], [2, 3], [0, 1, 2, 3]],
  ['of a cell in a loop', [[1], [0], []], [0], [0, 1]],
])('%s', (_, inputs, results, found) => {
  expect([...upstreamOf(cells(...inputs), results)].sort()).toEqual(found);
});

test('a long chain is no trouble', () => {
  const chain = cells(...Array.from({ length: 50_000 }, (_, i) => (i === 0 ? [] : [i - 1])));
  expect(upstreamOf(chain, [49_999]).size).toBe(50_000);
});
