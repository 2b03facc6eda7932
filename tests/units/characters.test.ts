import { expect, test } from 'vitest';
import {
  isBlank,
  isDigit,
  quote,
  skipBlanks,
  skipDigits,
  wordAt,
} from '../../src/units/characters.ts';

test('only the ten plain digits are digits', () => {
  expect(['0', '9', '²', '٣', 'a', '', undefined].map(isDigit)).toEqual([
    true,
    true,
    false,
    false,
    false,
    false,
    false,
  ]);
});

test('no-break and thin spaces are blanks, a line end and the end of text are not', () => {
  expect([' ', '\t', '\u00A0', '\u2009', '\u202F', '\n', '', undefined].map(isBlank)).toEqual([
    true,
    true,
    true,
    true,
    true,
    false,
    false,
    false,
  ]);
});

test('skipping ends at the first other character and at the end of the text', () => {
  expect(skipBlanks('a \u00A0b', 1)).toBe(3);
  expect(skipBlanks('a  ', 1)).toBe(3);
  expect(skipDigits('a123.', 1)).toBe(4);
});

test.each([
  ['in_x2 y', 0, 'in_x2'],
  ['3mm', 1, 'mm'],
  ['m²', 0, 'm'],
  ['°C', 0, ''],
  ['', 0, ''],
  ['a', 5, ''],
])('the word in %j at %i is %j', (text, at, word) => {
  expect(wordAt(text, at)).toBe(word);
});

test('a long stretch is quoted cut to 40 characters', () => {
  expect(quote('short')).toBe('short');
  expect(quote('x'.repeat(100_000))).toBe(`${'x'.repeat(39)}…`);
});
