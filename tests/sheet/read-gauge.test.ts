import { describe, expect, test } from 'vitest';
import { readGauge, showAs } from '../../src/sheet/read-gauge.ts';
import { createStanding } from '../../src/sheet/standing.ts';
import type { System } from '../../src/units/unit.ts';
import { block, makeSheet } from './made-book.ts';

const GIVENS = block(
  'given',
  'gap = 3 ± 0.1 mm "Gap" to 0.01',
  'other = 2 ± 0.1 mm',
  'sure = 3 mm to 0.01',
  'sizes = [1, 2] mm to 0.1',
  'open = blank mm',
  'words = "free"',
);

function read(line: string, system?: System) {
  const { book, frame } = makeSheet(
    GIVENS +
      block('work', 'bent = gap * gap - 6 mm * gap as mm^2', 'both = gap + other') +
      block('check', line),
  );
  const standing = createStanding(book, frame, {
    isEntered: () => false,
    ...(system === undefined ? {} : { system }),
  });
  const [check] = book.checks;
  return readGauge(check!, book.cells[check!.subject!]!, standing);
}
const plain = (text: string | undefined) => text?.replaceAll('\u00a0', ' ');

test('a gauge has its window, its value, and what it means to be outside', () => {
  const gauge = read('sure between 2 mm and 0.004 m "Bearing gap" below "Rides." above "Drags."');
  expect(gauge).toMatchObject({ title: 'Bearing gap', below: 'Rides.', above: 'Drags.' });
  expect([plain(gauge.least?.text), plain(gauge.most?.text)]).toEqual(['2.00 mm', '4.00 mm']);
  expect(gauge.values).toMatchObject([{ value: 0.003, spread: undefined }]);
});

test('limits and values are shown in the units of the page', () => {
  const gauge = read('sure at least 25.4 mm', 'inch-pound');
  expect([plain(gauge.least?.text), plain(gauge.values[0]!.text)]).toEqual([
    '1.0000 in',
    '0.1181 in',
  ]);
});

test('a doubted value has its worst case and its likely range', () => {
  const [value] = read('both at least 2 mm').values;
  expect(value!.spread!.worst).toEqual([expect.closeTo(0.0048, 9), expect.closeTo(0.0052, 9)]);
  const [from, to] = value!.spread!.likely!;
  // Two rectangular doubts of ± 0.1 mm, at 95 % of a normal distribution.
  expect(to - from).toBeCloseTo(2 * 1.959964 * 0.0001 * Math.sqrt(2 / 3), 9);
});

test('one that bends within its doubt has no likely range', () => {
  const [value] = read('bent at least 0 mm^2').values;
  expect(value!.spread).toBeDefined();
  expect(value!.spread).not.toHaveProperty('likely');
});

test('each element of a list is a value of its own, called by its place', () => {
  const { values } = read('sizes at most 5 mm');
  expect(values.map(({ label, text }) => [label, plain(text)])).toEqual([
    ['1', '1.0 mm'],
    ['2', '2.0 mm'],
  ]);
});

describe('what is not known', () => {
  test('a value that is blank is drawn as a question mark', () => {
    expect(read('open at least 1 mm').values).toMatchObject([{ value: Number.NaN, text: '?' }]);
  });

  test('a limit that is blank is left out', () => {
    const gauge = read('sure between open and 4 mm');
    expect([gauge.least, plain(gauge.most?.text)]).toEqual([undefined, '4.00 mm']);
  });

  test('words stand on no gauge', () => {
    expect(read('words is "free"').values).toEqual([]);
  });
});

test('a number is shown as its cell is; one without a unit as it is', () => {
  const { cell } = makeSheet(GIVENS);
  const at = { system: () => undefined };
  expect(plain(showAs(cell('sizes'), at)(0.0015))).toBe('1.5 mm');
  expect(showAs(cell('words'), at)(3)).toBe('3');
});
