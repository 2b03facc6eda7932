import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatEcho } from '../../src/language/entry-echo.ts';
import { UNITS } from '../../src/units/unit-table.ts';
import { expectValue, field, type ReadValue } from './made-entry.ts';

function echo(text: string, symbol: string, type: 'quantity' | 'list' = 'quantity'): string {
  const expected = field(symbol, type);
  return formatEcho(expectValue(text, expected), expected.unit).replaceAll('\u00A0', ' ');
}

test.each([
  ['3 1/8', 'in', '3.125 in'],
  ['12,5', 'mm', '12.5 mm'],
  ['80.6 mm', 'in', '80.6 mm = 3.173228 in'],
  ['25 thou', 'in', '25 thou = 0.025 in'],
  [`5' 7 1/4"`, 'in', '67.25 in'],
  ['3.212 ± 0.003', 'in', '3.212 ± 0.003 in'],
  ['3.212 in ± 3 thou', 'in', '3.212 ± 0.003 in'],
  ['3.212 +0.05/-0.02', 'in', '3.212 +0.05/−0.02 in'],
  ['3.212; 3.214; 3.211', 'in', 'mean of 3: 3.212333 in'],
  ['-5 ± 1', 'deg', '−5 ± 1°'],
  ['3.55', '', '3.55'],
  ['3 in - 2 mm', 'in', '2.92126 in'],
])('%s in a field of %s is echoed as %s', (text, symbol, expected) => {
  expect(echo(text, symbol)).toBe(expected);
});

test.each([
  ['[0.010, 0.015]', 'in', '[0.01, 0.015] in'],
  ['[1, 2] mm', 'in', '[1, 2] mm = [0.03937008, 0.07874016] in'],
  ['[]', 'in', '[] in'],
  ['[2,95; 1,95]', '', '[2.95, 1.95]'],
])('the list %s in a field of %s is echoed as %s', (text, symbol, expected) => {
  expect(echo(text, symbol, 'list')).toBe(expected);
});

test('words are echoed as they are', () => {
  expect(formatEcho({ state: 'value', value: 'old', explicit: false }, undefined)).toBe('old');
});

test('an echo typed in again is understood as the same', () => {
  const sizes = fc
    .double({ min: 0.01, max: 1e6, noNaN: true })
    .map((x) => Number(x.toPrecision(6)));
  const units = fc.constantFrom(...UNITS.map((unit) => unit.symbol), 'in/rev', '1/mi');
  fc.assert(
    fc.property(sizes, sizes, sizes, units, (size, minus, plus, symbol) => {
      const expected = field(symbol);
      const first = expectValue(`${size} +${plus}/-${minus} ${symbol}`, expected);
      const again = expectValue(formatEcho(first, expected.unit), expected);
      for (const [a, b] of pairs(first, again)) expect(Math.abs(a / b - 1)).toBeLessThan(1e-6);
    }),
  );
});

function pairs(a: ReadValue, b: ReadValue): readonly (readonly [number, number])[] {
  return [
    [a.value as number, b.value as number],
    [a.tolerance!.minus, b.tolerance!.minus],
    [a.tolerance!.plus, b.tolerance!.plus],
  ];
}

test('inches over inches are echoed as the plain number that they are', () => {
  const ratio = expectValue('7 in / 2 in', field(''));
  expect(ratio.unit).toBeUndefined();
  expect(formatEcho(ratio, undefined)).toBe('3.5');
});
