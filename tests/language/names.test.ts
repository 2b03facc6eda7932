import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inferName, isName, maybeRole } from '../../src/language/names.ts';

test.each([
  ['gap', true],
  ['gap_2', true],
  ['x', true],
  ['a__b', true],
  ['constructor', true],
  ['Gap', false],
  ['_gap', false],
  ['__proto__', false],
  ['2gap', false],
  ['gap-left', false],
  ['gap left', false],
  ['größe', false],
  ['', false],
])('%j is a name: %s', (text, is) => {
  expect(isName(text)).toBe(is);
});

test.each([
  ['in', 'a unit'],
  ['rpm', 'a unit'],
  ['min', 'a unit'],
  ['rev', 'a unit'],
  ['if', 'a word of the language'],
  ['otherwise', 'a word of the language'],
  ['pi', 'a word of the language'],
  ['gap', undefined],
  ['max', undefined],
  ['constructor', undefined],
])('%s means %s already', (word, role) => {
  expect(maybeRole(word)).toBe(role);
});

describe('a name made from any text', () => {
  test.each([
    ['Gap Left', 'gap_left'],
    ['  Gap  ', 'gap'],
    ['2nd gear', 'nd_gear'],
    ['__proto__', 'proto'],
    ['!!!', 'a_name'],
    ['', 'a_name'],
    ['Größe', 'gr_e'],
  ])('%j is %s', (text, name) => {
    expect(inferName(text)).toBe(name);
  });

  test('is a name, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(isName(inferName(text))).toBe(true);
      }),
    );
  });
});
