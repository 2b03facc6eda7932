import { expect, test } from 'vitest';
import type { Kind, Value } from '../../../src/language/kind.ts';
import { describeDifference } from '../../../src/sheet/compare/difference-words.ts';
import type { Display } from '../../../src/sheet/sheet.ts';
import { parseUnit } from '../../../src/units/parse-unit.ts';
import type { System } from '../../../src/units/unit.ts';

/** Numbers are in the unit that is shown. */
function say(from: Value, to: Value, symbol: string, resolution?: number, system?: System): string {
  const unit = symbol === '' ? undefined : parseUnit(symbol)!;
  const isList = from instanceof Float64Array;
  const dimension = (unit ?? parseUnit('%')!).dimension;
  const kind: Kind =
    typeof from === 'string' ? { type: 'text' } : { type: isList ? 'list' : 'quantity', dimension };
  const display: Display = {
    ...(unit === undefined ? {} : { unit }),
    ...(resolution === undefined ? {} : { resolution }),
  };
  const inSI = (value: Value): Value => {
    if (typeof value === 'number') return value * (unit?.factor ?? 1);
    return value instanceof Float64Array ? value.map((x) => x * (unit?.factor ?? 1)) : value;
  };
  const words = describeDifference(inSI(from), inSI(to), { kind, display }, system);
  return words.replaceAll(/[\u00a0\u202f]/g, ' ');
}

test.each([
  [2460, 2820, 'rpm', 10, '+360 rpm, 15 % more'],
  [2820, 2460, 'rpm', 10, '−360 rpm, 13 % less'],
  [3.25, 3.73, '', 0.01, '+0.48, 15 % more'],
  [0, 12, 'mph', 1, '+12 mph, more'],
  [-1, 1, 'mm', 0.1, '+2.0 mm, more'],
  [20, 22, '%', 1, '+2 %, more'],
  [100, 250, 'rpm', 1, '+150 rpm, 150 % more'],
  [1000, 1055, 'rpm', 1, '+55 rpm, 5.5 % more'],
  [1000, 1000.1, 'rpm', 0.1, '+0.1 rpm, more'],
])('from %d to %d %s', (from, to, unit, step, words) => {
  expect(say(from, to, unit, step)).toBe(words);
});

test('what rounds to nothing is the same', () => {
  expect(say(2460, 2463, 'rpm', 10)).toBe('the same');
  expect(say(2460, 2460, 'rpm')).toBe('the same');
});

test('the difference is in the units of the page', () => {
  expect(say(1, 2, 'in', 0.001, 'metric')).toBe('+25.40 mm, 100 % more');
});

test('lists differ element by element', () => {
  const [a, b] = [Float64Array.of(100, 200, 300), Float64Array.of(120, 200, 290)];
  expect(say(a, b, 'rpm', 10)).toBe('+20, 0, −10 rpm');
  expect(say(a, a, 'rpm', 10)).toBe('the same');
});

test('lists of different lengths say how long they are', () => {
  expect(say(Float64Array.of(1, 2, 3), Float64Array.of(1, 2), 'rpm')).toBe('2 instead of 3');
});

test('words are told in place of each other', () => {
  expect(say('Wide five-speed', 'Close five-speed', '')).toBe('instead of Wide five-speed');
  expect(say('Wide', 'Wide', '')).toBe('the same');
});
