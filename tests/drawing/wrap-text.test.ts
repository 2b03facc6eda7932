import fc from 'fast-check';
import { expect, test } from 'vitest';
import { textWidth } from '../../src/drawing/text-width.ts';
import { widestLine, wrapText } from '../../src/drawing/wrap-text.ts';

test('a text that fits stays on its line', () => {
  expect(wrapText('rides as it wears', 300, 13)).toEqual(['rides as it wears']);
});

test('a text is broken at blanks', () => {
  expect(wrapText('rides as it wears', 70, 13)).toEqual(['rides as it', 'wears']);
});

test('a number stays with its unit', () => {
  expect(wrapText('gap 0.165\u00a0in', 60, 13)).toEqual(['gap', '0.165\u00a0in']);
});

test('a word wider than the line is broken inside', () => {
  expect(wrapText('Donaudampfschiff', 64, 13)).toEqual(['Donauda', 'mpfschiff']);
});

test.each(['', '   '])('an empty text has no lines', (text) => {
  expect(wrapText(text, 100, 13)).toEqual([]);
});

test('a width of nothing still ends', () => {
  expect(wrapText('abc', 0, 13)).toEqual(['a', 'b', 'c']);
});

test('no line is too wide and no letter is lost', () => {
  fc.assert(
    fc.property(fc.string(), fc.integer({ min: 30, max: 300 }), (text, width) => {
      const lines = wrapText(text, width, 13);
      expect(lines.join('').replace(/[ \t\n]/g, '')).toBe(text.replace(/[ \t\n]/g, ''));
      for (const line of lines) expect(textWidth(line, 13)).toBeLessThanOrEqual(width);
    }),
  );
});

test('the widest line decides', () => {
  expect(widestLine(['a', 'abc', 'ab'], 13)).toBe(textWidth('abc', 13));
  expect(widestLine([], 13)).toBe(0);
});
