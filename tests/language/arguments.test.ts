import { describe, expect, test } from 'vitest';
import { matchArguments } from '../../src/language/arguments.ts';
import type { CallNode } from '../../src/language/tree.ts';
import { FUNCTIONS, readTree } from './made-formula.ts';
import { sketchTree } from './sketch-tree.ts';

/** Parameter and value of each match, or the problem's message. */
function match(source: string): readonly (readonly [string, string | undefined])[] | string {
  const call = readTree(source) as CallNode;
  const matched = matchArguments(FUNCTIONS.get(call.name)!, call);
  if ('code' in matched) return matched.message;
  return matched.map(({ parameter, value }) => [parameter.name, value && sketchTree(value)]);
}

describe('the arguments of a call go to its parameters', () => {
  test('by place', () => {
    expect(match('interpolate(a, b, c)')).toEqual([
      ['xs', 'a'],
      ['ys', 'b'],
      ['at', 'c'],
    ]);
  });

  test('by name, in the order of the declaration', () => {
    expect(match('interpolate(at: c, ys: b, xs: a)')).toEqual([
      ['xs', 'a'],
      ['ys', 'b'],
      ['at', 'c'],
    ]);
  });

  test('by name first and by place behind it', () => {
    expect(match('interpolate(at: c, a, b)')).toEqual([
      ['xs', 'a'],
      ['ys', 'b'],
      ['at', 'c'],
    ]);
  });

  test('one that is left out stands without a value', () => {
    expect(match('round(a)')).toEqual([
      ['value', 'a'],
      ['step', undefined],
    ]);
  });

  test('the last one several times', () => {
    expect(match('max(a, b, c)')).toEqual([
      ['values', 'a'],
      ['values', 'b'],
      ['values', 'c'],
    ]);
  });
});

describe('a call that does not fit is told what the function takes', () => {
  test.each([
    ['round()', 'round takes value, step if wanted, 0 values given'],
    ['round(a, b, c)', 'round takes value, step if wanted, 3 values given'],
    ['max()', 'max takes values, one or more, 0 values given'],
    ['interpolate(at: c)', 'interpolate takes xs, ys, at, 1 value given'],
    ['round(a, stp: b)', 'round has no argument stp; did you mean step?'],
    ['round(a, constructor: b)', 'round has no argument constructor'],
    ['round(a, value: b)', 'round is given its argument value twice'],
    ['round(step: a, step: b)', 'round is given its argument step twice'],
    ['max(a, values: b)', 'max is given its argument values twice'],
  ])('%s', (source, message) => {
    expect(match(source)).toBe(message);
  });
});
