import { expect, test } from 'vitest';
import { describeChain, signedText } from '../../src/drawing/chain-data.ts';

const term = (sign: 1 | -1, value: number, text: string) => ({
  sign,
  value,
  text,
  label: 'Straightedge',
});

test.each([
  [term(1, 0.25, '0.250 in'), '+\u00a00.250 in'],
  [term(-1, 0.25, '0.250 in'), '−\u00a00.250 in'],
  [term(-1, -0.25, '−0.250 in'), '−\u00a0(−0.250 in)'],
])('%o is written with its sign', (given, text) => {
  expect(signedText(given)).toBe(text);
});

test('a chain is told term by term, the closing dimension last', () => {
  const terms = [term(1, 3, '3.000 in'), term(-1, Number.NaN, '')];
  expect(
    describeChain({ title: '', terms, total: { label: 'Gap', value: Number.NaN, text: '' } }),
  ).toBe(
    'Dimension chain: plus Straightedge, 3.000 in; minus Straightedge, not known yet. Closing dimension: Gap, not known yet.',
  );
});

test('a chain without terms says so', () => {
  const total = { label: 'Gap', value: 0, text: '0 in' };
  expect(describeChain({ title: '', terms: [], total })).toContain('no terms');
});
