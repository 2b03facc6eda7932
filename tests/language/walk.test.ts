import { expect, test } from 'vitest';
import { callsIn, namesIn, partsOf } from '../../src/language/walk.ts';
import { readTree } from './made-formula.ts';
import { sketchTree } from './sketch-tree.ts';

test.each([
  ['3', []],
  ['"text"', []],
  ['a', []],
  ['a.b', ['a']],
  ['[a, 2]', ['a', '2']],
  ['-a', ['a']],
  ['a + b * c', ['a', '(* b c)']],
  ['if a then b else c', ['a', 'b', 'c']],
  ['a otherwise b', ['a', 'b']],
  ['f(a, x: b)', ['a', 'b']],
])('the parts of %s', (source, parts) => {
  expect(partsOf(readTree(source)).map(sketchTree)).toEqual(parts);
});

test.each([
  ['3 in', []],
  ['a + b + a', ['a', 'b']],
  ['pi * a', ['a']],
  ['max(max, b)', ['max', 'b']],
  ['spring.rate + rate', ['spring', 'rate']],
  ['b otherwise a', ['b', 'a']],
  ['f(at: a)', ['a']],
])('the names in %s', (source, names) => {
  expect(namesIn(readTree(source))).toEqual(names);
});

test.each([
  ['a + 2', []],
  ['max(a, b)', ['max']],
  ['tan(asin(a / max(b, c)))', ['tan', 'asin', 'max']],
  ['if abs(a) > 2 then sqrt(b) else sqrt(c)', ['abs', 'sqrt']],
])('the functions called in %s', (source, names) => {
  expect(callsIn(readTree(source))).toEqual(names);
});
