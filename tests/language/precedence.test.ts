import { expect, test } from 'vitest';
import { bindingOf, operandBindings } from '../../src/language/precedence.ts';
import { readTree } from './made-formula.ts';

test('from the loosest to the tightest', () => {
  const sources = [
    'a otherwise b',
    'a or b',
    'a and b',
    'not a',
    'a < b',
    'a + b',
    'a * b',
    '-a',
    'a^b',
    'a',
  ];
  const bindings = sources.map((source) => bindingOf(readTree(source)));
  expect(bindings).toEqual([...bindings].sort((a, b) => a - b));
  expect(new Set(bindings).size).toBe(sources.length);
});

test.each([
  ['if a then b else c', 'a otherwise b'],
  ['a - b', 'a + b'],
  ['a / b', 'a * b'],
  ['a >= b', 'a < b'],
  ['f(a)', 'a'],
  ['a.b', 'a'],
  ['[a]', 'a'],
  ['3 1/8 in', 'a'],
])('%s binds as tightly as %s', (one, other) => {
  expect(bindingOf(readTree(one))).toBe(bindingOf(readTree(other)));
});

test.each([
  ['a + b', [5, 6]],
  ['a < b', [5, 5]],
  ['a^b', [9, 7]],
  ['-a', [7, 7]],
])('%s needs of its sides %o', (source, bindings) => {
  expect(operandBindings(readTree(source))).toEqual(bindings);
});
