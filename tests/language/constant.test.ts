import { expect, test } from 'vitest';
import { maybeConstant } from '../../src/language/constant.ts';
import { readTree } from './made-formula.ts';

test.each([
  ['2', 2],
  ['-2', -2],
  ['--2', 2],
  ['1/2', 0.5],
  ['(1/2)', 0.5],
  ['-1/2', -0.5],
  ['1/-2', -0.5],
  ['1/2/2', 0.25],
  ['1/0', undefined],
  ['2 in', undefined],
  ['50 %', undefined],
  ['1 + 1', undefined],
  ['2 * 3', undefined],
  ['n', undefined],
  ['pi', undefined],
  ['not true', undefined],
])('%s is %s', (source, value) => {
  expect(maybeConstant(readTree(source))).toBe(value);
});
