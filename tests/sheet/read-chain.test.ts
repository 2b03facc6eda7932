import { describe, expect, test } from 'vitest';
import { readChain, type StackCell } from '../../src/sheet/read-chain.ts';
import { createStanding } from '../../src/sheet/standing.ts';
import type { System } from '../../src/units/unit.ts';
import { block, makeSheet } from './made-book.ts';

function chain(lines: readonly string[], system?: System) {
  const { book, frame, cell } = makeSheet(
    block('given', 'finger_reading = 3 in', 'edge = 1/4 in', 'open = blank in') +
      block('stack bearing_gap "Gap" as in to 0.001', ...lines),
  );
  const standing = createStanding(book, frame, {
    isEntered: () => false,
    ...(system === undefined ? {} : { system }),
  });
  return readChain(cell('bearing_gap') as StackCell, standing);
}
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

test('a chain has its terms in order, each with its sign, and its sum', () => {
  const { title, terms, total } = chain([
    '+ finger_reading',
    '- edge "the straightedge"',
    '+ 2 * edge',
  ]);
  expect(title).toBe('Gap');
  expect(terms.map(({ sign, label, text }) => [sign, label, plain(text)])).toEqual([
    [1, 'finger reading', '3.000 in'],
    [-1, 'the straightedge', '0.250 in'],
    [1, '2 * edge', '0.500 in'],
  ]);
  expect([total.label, plain(total.text)]).toEqual(['bearing gap', '3.250 in']);
  expect(total.value).toBeCloseTo(3.25 * 0.0254, 12);
});

test('all of a chain is in one unit, that of the page where it has its own', () => {
  const { terms, total } = chain(['+ finger_reading', '- 3 mm'], 'metric');
  expect([...terms, total].map(({ text }) => plain(text))).toEqual([
    '76.20 mm',
    '3.00 mm',
    '73.20 mm',
  ]);
});

describe('what is not known', () => {
  test('a term that is blank, and with it the sum, is drawn as a question mark', () => {
    const { terms, total } = chain(['+ finger_reading', '- open']);
    expect(terms.map(({ text }) => plain(text))).toEqual(['3.000 in', '?']);
    expect(total).toMatchObject({ value: Number.NaN, text: '?' });
  });

  test('a chain that cannot be worked at all has its terms by name', () => {
    const { terms, total } = chain(['+ finger_reading', '- ghost']);
    expect(terms.map(({ label, text }) => [label, text])).toEqual([
      ['finger reading', '?'],
      ['ghost', '?'],
    ]);
    expect(total.text).toBe('?');
  });
});
