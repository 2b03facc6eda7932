import { expect, test } from 'vitest';
import { printText } from '../../src/language/print-text.ts';
import { readTree } from './made-formula.ts';

test.each([
  ['(((1)))', '1'],
  ['1+2*3', '1 + 2 * 3'],
  ['(1+2)*3', '(1 + 2) * 3'],
  ['1-(2-3)', '1 - (2 - 3)'],
  ['(1-2)-3', '1 - 2 - 3'],
  ['(2^3)^2', '(2 ^ 3) ^ 2'],
  ['2^(3^2)', '2 ^ 3 ^ 2'],
  ['(-2)^2', '(-2) ^ 2'],
  ['-(2^2)', '-2 ^ 2'],
  ['2^(-1)', '2 ^ -1'],
  ['not (a and b)', 'not (a and b)'],
  ['(not a) and b', 'not a and b'],
  ['(if a then b else c) + 1', '(if a then b else c) + 1'],
  ['a otherwise (b otherwise c)', 'a otherwise b otherwise c'],
  ['3-1/8', '3 - 1 / 8'],
  ['3⅛ in', '3 1/8 in'],
  ['12 lbf*ft', '12 lbf·ft'],
  ['max( 1 ,2)', 'max(1, 2)'],
  ['interpolate(at:1,xs:a,ys:b)', 'interpolate(at: 1, xs: a, ys: b)'],
  ['spring . rate', 'spring.rate'],
  ['[ ]', '[]'],
  ['"free   text"', '"free   text"'],
])('%s prints as %s', (source, printed) => {
  expect(printText(readTree(source))).toBe(printed);
});
