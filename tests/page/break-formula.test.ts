import { expect, test } from 'vitest';
import { parseExpression } from '../../src/language/parse.ts';
import { mathElement, mathWords, printMath } from '../../src/language/print-math.ts';
import { breakFormula } from '../../src/page/break-formula.ts';
import { createMath } from '../../src/page/math.ts';

/** The outermost row of `y = …`. */
function rowOf(source: string): Element {
  const tree = parseExpression(source, 'sheet');
  if ('code' in tree) throw new Error(tree.message);
  const row = mathElement('mrow', mathWords('y'), mathElement('mo', '='), printMath(tree));
  const math = createMath(breakFormula(mathElement('math', row)));
  return math.firstElementChild!;
}

/** Its parts, as text. */
function partsOf(source: string): string[] {
  return [...rowOf(source).children].map((part) => part.textContent ?? '');
}

test.each([
  ['pull(a, b, c, d)', ['y', '=', 'pull(', 'a,', 'b,', 'c,', 'd)']],
  ['2 * pull(a, b + c, c, d)', ['y', '=', '2', '×', 'pull(', 'a,', 'b+c,', 'c,', 'd)']],
])('%s may break between many values of a function', (source, parts) => {
  expect(partsOf(source)).toEqual(parts);
});

test.each([
  ['pull(a, b, c)', ['y', '=', 'pull(', 'a,', 'b,', 'c)']],
  ['item(pull(a, b), 2)', ['y', '=', 'item(', 'pull(', 'a,', 'b),', '2)']],
  ['[1, 2, 3]', ['y', '=', '[1,', '2,', '3]']],
  ['sqrt(a) + max(a / b, c)', ['y', '=', 'a', '+', 'max(ab,c)']],
])('%s may break inside where it is all there is', (source, parts) => {
  expect(partsOf(source)).toEqual(parts);
});

test.each([
  ['a * max(b, c)', 'max(', 'b,', 'c)'],
  ['a * [1, 2]', '[1,', '2]'],
  ['a * (b + c - d)', '(b', '+', 'c', '−', 'd)'],
])('%s breaks inside only where a line is too short for that part', (source, ...parts) => {
  const inner = rowOf(source).querySelector('.breaks')!;
  expect([...inner.children].map(({ textContent }) => textContent)).toEqual(parts);
});

test.each(['a * (b / c + d)', 'a * max(b / c, d)', 'a * sqrt(b + c)'])(
  '%s keeps what is built up in one piece, so that brackets grow with it',
  (source) => {
    expect(rowOf(source).querySelector('.breaks')).toBeNull();
  },
);

test.each([
  ['a * b * c', ['y', '=', 'a', '×', 'b', '×', 'c']],
  ['a + b * c', ['y', '=', 'a', '+', 'b', '×', 'c']],
  ['a * (b + c) - d', ['y', '=', 'a', '×', '(b+c)', '−', 'd']],
  ['a / b - 1', ['y', '=', 'ab', '−', '1']],
  ['max(a, b + c) + d', ['y', '=', 'max(a,b+c)', '+', 'd']],
  ['a otherwise b * c', ['y', '=', 'a', '\u00a0otherwise\u00a0', 'b', '×', 'c']],
  ['a', ['y', '=', 'a']],
])('%s may break at its outermost signs only', (source, parts) => {
  expect(partsOf(source)).toEqual(parts);
});
