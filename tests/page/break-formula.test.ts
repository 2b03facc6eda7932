import { expect, test } from 'vitest';
import { parseExpression } from '../../src/language/parse.ts';
import { mathElement, mathWords, printMath } from '../../src/language/print-math.ts';
import { breakFormula } from '../../src/page/break-formula.ts';
import { createMath } from '../../src/page/math.ts';

/** The parts of the outermost row, as text. */
function partsOf(source: string): string[] {
  const tree = parseExpression(source, 'sheet');
  if ('code' in tree) throw new Error(tree.message);
  const row = mathElement('mrow', mathWords('y'), mathElement('mo', '='), printMath(tree));
  const math = createMath(breakFormula(mathElement('math', row)));
  return [...math.firstElementChild!.children].map((part) => part.textContent ?? '');
}

test.each([
  ['pull(a, b, c, d)', ['y', '=', 'pull(', 'a,', 'b,', 'c,', 'd)']],
  ['2 * pull(a, b + c, c, d)', ['y', '=', '2', '×', 'pull(', 'a,', 'b+c,', 'c,', 'd)']],
  ['pull(a, b, c)', ['y', '=', 'pull(a,b,c)']],
  ['[1, 2, 3, 4, 5]', ['y', '=', '[1,2,3,4,5]']],
])('%s may break between many values of a function, and only there', (source, parts) => {
  expect(partsOf(source)).toEqual(parts);
});

test.each([
  ['a * b * c', ['y', '=', 'a', '×', 'b', '×', 'c']],
  ['a + b * c', ['y', '=', 'a', '+', 'b', '×', 'c']],
  ['a * (b + c) - d', ['y', '=', 'a', '×', '(b+c)', '−', 'd']],
  ['a / b - 1', ['y', '=', 'ab', '−', '1']],
  ['max(a, b + c) + d', ['y', '=', 'max(a,b+c)', '+', 'd']],
  ['a', ['y', '=', 'a']],
])('%s may break at its outermost signs only', (source, parts) => {
  expect(partsOf(source)).toEqual(parts);
});
