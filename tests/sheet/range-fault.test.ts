import { expect, test } from 'vitest';
import { BUILTINS, createFunctions } from '../../src/language/functions/builtins.ts';
import { parseExpression } from '../../src/language/parse.ts';
import type { Expression } from '../../src/language/tree.ts';
import { rangeFault } from '../../src/sheet/range-fault.ts';
import { block, makeSheet } from './made-book.ts';

const FUNCTIONS = createFunctions(BUILTINS);

function faultOf(from: string, to: string): string | undefined {
  const source = `${from} to ${to}`;
  const read = (text: string, at: number): Expression => {
    const tree = parseExpression(text, 'sheet');
    if ('code' in tree) throw new Error(tree.message);
    return { ...tree, from: at, to: at + text.length };
  };
  const range = { from: read(from, 0), to: read(to, from.length + 4) };
  return rangeFault(range, FUNCTIONS, source)?.message;
}

test.each([
  ['1 in', '2 in'],
  ['-2', '-1'],
  ['25 mm', '1 in'],
  ['least', '1 in'],
  ['2 in', '1 in + least'],
  ['1 / 0', '1'],
])('from %s to %s there is no fault to be seen yet', (from, to) => {
  expect(faultOf(from, to)).toBeUndefined();
});

test.each([
  ['2 in', '1 in'],
  ['1 in', '25 mm'],
  ['3', '3'],
  ['2 * 2', '1 + 2'],
])('from %s to %s there is nothing', (from, to) => {
  expect(faultOf(from, to)).toBe(
    `the range from ${from} to ${to} leaves nothing in between; write the smaller end first`,
  );
});

test.each([
  ['a given', block('given', 'a = 3 from 5 to 2')],
  ['a chart', block('given', 'a = 3') + block('chart "C"', 'a over a from 5 to 2')],
  [
    'the limits of a chart',
    block('given', 'a = 3') + block('chart "C"', 'a over a from 2 to 5', 'limits 5 to 2'),
  ],
  ['a check', block('given', 'a = 3') + block('check', 'a between 5 and 2')],
  ['a find', block('given', 'a = 3') + block('find', 'a so that a is 3 from 5 to 2')],
  [
    'a practice question',
    block('given', 'a = 3') +
      block('practice "P"', 'ask a within 0.1 "How much?"', 'vary a from 5 to 2'),
  ],
])('swapped ends are told, and told once, in %s', (_, text) => {
  expect(makeSheet(text).book.problems.map(({ code }) => code)).toEqual(['range-order']);
});
