import { describe, expect, test } from 'vitest';
import { isProblem, readNumber } from '../../src/language/entry-number.ts';

const read = (text: string) => readNumber(text, { from: 0, to: text.length });

test('a number comes with its place in the entry, blanks left out', () => {
  expect(readNumber('1;  2 in ;3', { from: 2, to: 9 })).toMatchObject({ from: 4, to: 8 });
});

test('a fault is placed in the whole entry', () => {
  expect(readNumber('1; 3 + x', { from: 2, to: 8 })).toMatchObject({ from: 7, to: 8 });
});

test.each([
  ['3', []],
  ['3 in', ['in']],
  ['3 in + 2 in', ['in']],
  ['3 in - 2 mm', ['in', 'mm']],
  ['60 km / 1 h', ['km', 'h']],
  ['5 %', ['%']],
])('the units typed in %s are %j', (text, symbols) => {
  const number = read(text);
  expect(isProblem(number) ? number.message : number.units.map((unit) => unit.symbol)).toEqual(
    symbols,
  );
});

describe('a bracket may have its unit behind it', () => {
  test.each([
    ['(3 + 1/8) in', 3.125 * 0.0254],
    ['(3)mm', 0.003],
    ['((1 + 2) * 3) mm', 0.009],
    ['(2 + 1)"', 3 * 0.0254],
  ])('%s', (text, value) => {
    expect((read(text) as { value: number }).value).toBeCloseTo(value, 12);
  });

  test('but not where numbers inside have theirs', () => {
    expect(read('(3 in + 1 in) mm')).toMatchObject({
      code: 'mixed-units',
      message: '(3 in + 1 in) mm has units in the bracket and one behind it; keep one of the two',
    });
  });

  test.each(['(3) + (2) in', '2 * (3) in'])('nor where the bracket is not all: %s', (text) => {
    expect(read(text)).toMatchObject({ code: 'unknown-unit' });
  });
});

describe('a bare number beside one with a unit is found', () => {
  test.each([
    ['3 in + 2', '2 has no unit, but 3 in has one; write a unit behind both'],
    ['2 - 3 in', '2 has no unit, but 3 in has one; write a unit behind both'],
    ['2 * (3 in + 1)', '1 has no unit, but 3 in has one; write a unit behind both'],
    ['3 in + 2 * 4', '2 * 4 has no unit, but 3 in has one; write a unit behind both'],
  ])('%s', (text, message) => {
    expect(read(text)).toMatchObject({ code: 'mixed-units', message });
  });
});

test('a comma tight between numbers asks for a blank', () => {
  expect(read('3.1,4.2')).toMatchObject({ code: 'unreadable-entry', from: 3, to: 4 });
});

test.each([
  ['mm', 'mm', 0],
  ['842 /mi', 'mi', 5],
  ['3 * in', 'in', 4],
])('the unit without a number in %s is not called no unit', (text, unit, from) => {
  expect(read(text)).toMatchObject({
    code: 'unknown-unit',
    message: `${unit} does not stand behind a number: a unit follows its number and holds no blank, as in 3 in or 12 lbf·ft`,
    from,
  });
});
