import { describe, expect, test } from 'vitest';
import { type EntryNumber, isProblem, readNumber } from '../../src/language/entry-number.ts';
import {
  cut,
  maybeSharedUnit,
  resolveSeries,
  splitSeries,
} from '../../src/language/entry-series.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

const whole = (text: string) => ({ from: 0, to: text.length });
const pieces = (text: string) =>
  splitSeries(text, whole(text)).map(({ from, to }) => text.slice(from, to));

function numbersOf(text: string): readonly EntryNumber[] {
  return splitSeries(text, whole(text)).map((span) => {
    const number = readNumber(text, span);
    if (isProblem(number)) throw new Error(number.message);
    return number;
  });
}

describe('readings are parted', () => {
  test.each([
    ['1; 2;3', ['1', ' 2', '3']],
    ['1, 2, 3 in', ['1', ' 2', ' 3 in']],
    ['1,5; 2,5', ['1,5', ' 2,5']],
    ['1, 2; 3', ['1, 2', ' 3']],
    ['1,5', ['1,5']],
    ['1,', ['1', '']],
    ['1;', ['1', '']],
    ['(1; 2)', ['(1; 2)']],
    ['', ['']],
  ])('%j into %j', (text, expected) => {
    expect(pieces(text)).toEqual(expected);
  });

  test('and a cut falls only where it is told to', () => {
    expect(cut('a|b', { from: 0, to: 3 }, (at) => at === 1)).toEqual([
      { from: 0, to: 1 },
      { from: 2, to: 3 },
    ]);
  });
});

describe('numbers are brought to SI', () => {
  test.each([
    ['1; 2; 3', 'mm', [0.001, 0.002, 0.003], 'mm', false],
    ['1; 2; 3 in', 'mm', [0.0254, 0.0508, 0.0762], 'in', true],
    ['1 in; 2 mm', 'mm', [0.0254, 0.002], undefined, true],
    ['1 in; 2 in', 'mm', [0.0254, 0.0508], 'in', true],
    ['1 mm; 2; 3 in', 'mm', [0.001, 0.0508, 0.0762], undefined, true],
  ])('%s in a field of %s', (text, field, values, unit, explicit) => {
    const series = resolveSeries(text, numbersOf(text), parseUnit(field));
    expect(series).toMatchObject({ explicit });
    if (isProblem(series)) return;
    expect(series.unit?.symbol).toBe(unit);
    series.values.forEach((value, i) => {
      expect(value).toBeCloseTo(values[i]!, 12);
    });
  });

  test('an empty series has the dimension of its field', () => {
    expect(resolveSeries('', [], parseUnit('mm'))).toMatchObject({
      values: [],
      dimension: [1, 0, 0, 0],
    });
    expect(resolveSeries('', [], undefined)).toMatchObject({ values: [], dimension: [0, 0, 0, 0] });
  });

  test.each([
    ['1 in; 2', 'mixed-units', '2 has no unit, but others have'],
    ['1 in; 2 rpm', 'mixed-units', '1 in (length) and 2 rpm (turning speed) cannot stand together'],
  ])('%s is refused', (text, code, part) => {
    const series = resolveSeries(text, numbersOf(text), parseUnit('in'));
    expect(series).toMatchObject({ code, message: expect.stringContaining(part) });
  });

  test('a number that its unit makes too large is refused', () => {
    expect(resolveSeries('1e308', numbersOf('1e308'), parseUnit('GPa'))).toMatchObject({
      code: 'overflow',
    });
  });
});

test('a unit is shared where there is one and no other', () => {
  expect(maybeSharedUnit(numbersOf('1 in; 2 in; 3'))?.symbol).toBe('in');
  expect(maybeSharedUnit(numbersOf('1 in; 2 mm'))).toBeUndefined();
  expect(maybeSharedUnit(numbersOf('1; 2'))).toBeUndefined();
});
