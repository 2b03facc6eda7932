import { expect, test } from 'vitest';
import { recordSpread } from '../../src/cli/record-spread.ts';
import { block, makeBook } from '../sheet/made-book.ts';

const INCH = 0.0254;
const MADE = makeBook({
  '10-a.md': block('given', 'depth = 2 ± 0.004 in'),
  '20-b.md': [
    block('from 10-a', 'depth'),
    block('given', 'wide = 3.212 ± 0.003 in', 'sure = 1 in'),
    block(
      'work',
      'rest = wide - depth as in to 0.001',
      'both = [1, 2] * wide as in to 0.001',
      'plain = 2 * sure as in',
      'touch = abs(wide - 3.212 in) as in to 0.001',
    ),
  ].join('\n'),
});

function sure(name: string) {
  return recordSpread(MADE.book, MADE.frame, MADE.cell(`20-b/${name}`), INCH);
}

test('a result that hangs on nothing in doubt has nothing to tell', () => {
  expect(sure('plain')).toEqual({});
});

test('a result has worst case, likely range and shares in its own unit', () => {
  const { worst, likely, shares } = sure('rest') as never as {
    worst: { from: number; to: number };
    likely: { from: number; to: number };
    shares: readonly { name: string; share: number }[];
  };
  // By hand: 1.212 ± (0.003 + 0.004); u = √(0.003² + 0.004²)/√3 = 0.005/√3; 95 % of a normal one.
  expect(worst.from).toBeCloseTo(1.205, 9);
  expect(worst.to).toBeCloseTo(1.219, 9);
  expect(likely.to - likely.from).toBeCloseTo((2 * 1.959964 * 0.005) / Math.sqrt(3), 7);
  expect(shares.map(({ name }) => name)).toEqual(['10-a/depth', 'wide']);
  expect(shares.map(({ share }) => share)).toEqual([
    expect.closeTo(16 / 25, 6),
    expect.closeTo(9 / 25, 6),
  ]);
});

test('a list has one entry an element', () => {
  const { worst, likely, shares } = sure('both');
  expect(worst).toHaveLength(2);
  expect(likely).toHaveLength(2);
  expect(shares).toEqual([[{ name: 'wide', share: 1 }], [{ name: 'wide', share: 1 }]]);
});

test('where the result bends too much there is no likely range', () => {
  expect(sure('touch').likely).toBeNull();
  expect(sure('touch').worst).toEqual({ from: expect.closeTo(0, 9), to: expect.closeTo(0.003, 9) });
});
