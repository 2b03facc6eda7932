import { expect, test } from 'vitest';
import { createChainScale } from '../../src/drawing/chain-scale.ts';

const terms = (...signed: readonly number[]) =>
  signed.map((value) => ({
    sign: value < 0 ? (-1 as const) : (1 as const),
    value: Math.abs(value),
    text: '',
    label: '',
  }));

test('terms run on from where the one before ended, plus to the right, minus to the left', () => {
  const { origin, links, end } = createChainScale(terms(4, -3), 100, 500);
  expect(origin).toBe(100);
  expect(links).toEqual([
    { from: 100, to: 500, known: true },
    { from: 500, to: 200, known: true },
  ]);
  expect(end).toBe(200);
});

test('a chain that goes below its start keeps inside', () => {
  const { origin, end } = createChainScale(terms(1, -4), 0, 400);
  expect(origin).toBe(300);
  expect(end).toBe(0);
});

test('a value that is not known is as long as the middle one of the others', () => {
  const { links } = createChainScale(terms(1, 3, Number.NaN, 2), 0, 800);
  expect(links[2]).toEqual({ from: 400, to: 600, known: false });
});

test.each([[[]], [[0, 0]], [[Number.NaN]]])('%o still has places', (signed) => {
  const { origin, links, end } = createChainScale(terms(...signed), 10, 90);
  expect([origin, end, ...links.flatMap(({ from, to }) => [from, to])].every(Number.isFinite)).toBe(
    true,
  );
});
