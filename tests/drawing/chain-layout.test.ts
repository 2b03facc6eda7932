import { expect, test } from 'vitest';
import { isShort, layOutChain } from '../../src/drawing/chain-layout.ts';
import { CHAINS } from '../support/drawing-cases.ts';

const BEARING = CHAINS[0]![1];

test('in a wide drawing the words stand in a column beside the values', () => {
  const [words, value] = layOutChain(BEARING, 900).rows[0]!.letters;
  expect(words).toMatchObject({ x: 0, lines: ['Housing face to finger tips'] });
  expect(value?.lines).toEqual(['+\u00a03.212\u00a0in']);
  expect(value!.x).toBeGreaterThan(300);
});

test('in a narrow drawing value and words stand over the line', () => {
  const row = layOutChain(BEARING, 300).rows[0]!;
  expect(row.letters[0]?.lines.join(' ')).toBe('+\u00a03.212\u00a0in Housing face to finger tips');
  expect(row.letters[0]!.top).toBeLessThan(row.y);
});

test.each(CHAINS)('%s: rows stand one under the other, the closing dimension last', (_, data) => {
  for (const width of [240, 900]) {
    const { rows, total, height } = layOutChain(data, width);
    const ys = [...rows, total].map(({ y }) => y);
    expect(ys).toEqual([...ys].sort((a, b) => a - b));
    expect(total.foot).toBeLessThanOrEqual(height);
  }
});

test('a note tells that an unknown value is not to scale', () => {
  const unknown = CHAINS.find(([name]) => name === 'one value not known')![1];
  expect(layOutChain(unknown, 700).note?.lines).toEqual([
    'Not to scale: one value is not known yet.',
  ]);
  expect(layOutChain(BEARING, 700).note).toBeUndefined();
});

test('a dimension is short where two arrows do not fit', () => {
  expect(isShort({ from: 0, to: 10, known: true })).toBe(true);
  expect(isShort({ from: 100, to: 0, known: true })).toBe(false);
});
