import { describe, expect, test } from 'vitest';
import type { Kind } from '../../src/language/kind.ts';
import { displayIn, showValue } from '../../src/sheet/show.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

const inch = parseUnit('in')!;
const LENGTH: Kind = { type: 'quantity', dimension: inch.dimension };
const LENGTHS: Kind = { type: 'list', dimension: inch.dimension };
const PLAIN: Kind = { type: 'quantity', dimension: [0, 0, 0, 0] };
const TEXT: Kind = { type: 'text' };
const ROW = { key: 'Long', cells: new Map() };
const thou = { unit: inch, resolution: 0.001 };
const text = (...given: Parameters<typeof showValue>) =>
  showValue(...given).text.replaceAll('\u00a0', ' ');

test.each([
  ['a length in its unit and to its digit', 0.0762, LENGTH, thou, '3.000 in'],
  ['a length as a fraction', 0.0254 * 3.125, LENGTH, { unit: inch, fraction: 64 }, '3 1/8 in'],
  ['a length whose sheet names no unit', 0.0762, LENGTH, {}, '76.2 mm'],
  ['a plain number', 3.25, PLAIN, {}, '3.25'],
  ['nothing', 0, LENGTH, thou, '0.000 in'],
  ['a list', Float64Array.of(0.0254, 0.0508), LENGTHS, thou, '[1.000, 2.000] in'],
  ['a list of nothing', new Float64Array(), LENGTHS, thou, '[] in'],
  ['words', 'free', TEXT, {}, 'free'],
  ['no words', '', TEXT, {}, ''],
  ['a list of words', ['1st', '2nd'], { type: 'texts' }, {}, '[1st, 2nd]'],
  ['what is so', true, { type: 'truth' }, {}, 'yes'],
  ['what is not so', false, { type: 'truth' }, {}, 'no'],
  ['a row', ROW, { type: 'row', columns: new Map() }, {}, 'Long'],
  ['a table', [ROW, ROW], { type: 'table', columns: new Map() }, {}, '[Long, Long]'],
] as const)('%s', (_, value, kind, display, shown) => {
  expect(text(value as Parameters<typeof showValue>[0], kind as Kind, display)).toBe(shown);
});

test('the number stands apart from its unit, and each element by itself', () => {
  expect(showValue(Float64Array.of(0.0254, 0.0508), LENGTHS, thou)).toMatchObject({
    number: '[1.000, 2.000]',
    items: ['1.000', '2.000'],
    unit: { symbol: 'in' },
  });
  expect(showValue('free', TEXT, {})).toMatchObject({ number: 'free', unit: undefined });
});

describe('in the units of the page', () => {
  test.each([
    ['metric', '76.20 mm'],
    ['inch-pound', '3.000 in'],
    [undefined, '3.000 in'],
  ] as const)('%s', (system, shown) => {
    expect(text(0.0762, LENGTH, thou, system)).toBe(shown);
  });

  test('a display without a unit, and without a page, is left as it is', () => {
    expect(displayIn({ resolution: 0.1 }, 'metric')).toEqual({ resolution: 0.1 });
    expect(displayIn(thou, undefined)).toBe(thou);
    expect(displayIn(thou, 'inch-pound')).toBe(thou);
  });

  test('a fraction of an inch is no fraction of a millimetre', () => {
    expect(displayIn({ unit: inch, fraction: 64 }, 'metric')).toEqual({ unit: parseUnit('mm') });
  });

  test('what serves both systems stays', () => {
    const turns = { unit: parseUnit('rpm')!, resolution: 10 };
    expect(displayIn(turns, 'metric')).toBe(turns);
    expect(displayIn(turns, 'inch-pound')).toBe(turns);
  });
});
