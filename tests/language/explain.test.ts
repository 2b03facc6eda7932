import { describe, expect, test } from 'vitest';
import { makeFormula, problemOf } from './made-formula.ts';

const NAMES = {
  gap: '3 in',
  zero: '0',
  blank_gap: 'blank in',
  lost_gap: 'lost in',
  zeros: '[1, 0]',
  name: 'blank text',
};

describe('why a formula has no value is told at the part that has none', () => {
  test.each([
    ['1 + 2 / zero', 4, 12],
    ['(1 + 2 / zero) * 3', 5, 13],
    ['sqrt(1 - 2) + 1', 0, 11],
    ['max(1, 2 / zero)', 7, 15],
    ['[1, 2 / zero]', 4, 12],
    ['-(2 / zero)', 1, 11],
    ['if 2 / zero > 1 then 1 else 2', 3, 11],
    ['if 1 > 2 then 1 else 2 / zero', 21, 29],
    ['blank_gap otherwise gap / zero', 20, 30],
    ['not (1 / zero > 2)', 5, 13],
    ['gap * lost_gap / zero', 6, 14],
  ])('%s', (source, from, to) => {
    expect(problemOf(source, NAMES)).toMatchObject({ from, to });
  });
});

describe('the cell that is waited for', () => {
  test.each([
    ['gap + lost_gap', 'lost_gap', 'waits for lost_gap, which has an error'],
    ['gap + blank_gap', 'blank_gap', 'waits for blank_gap, which is blank'],
    ['name = "x"', 'name', 'waits for name, which is blank'],
  ])('%s waits for %s', (source, waitsFor, message) => {
    expect(problemOf(source, NAMES)).toMatchObject({ code: 'waiting', waitsFor, message });
  });
});

test('a formula of 1 000 parts is explained', () => {
  const source = [...Array.from({ length: 998 }, () => 'gap'), 'gap / zero'].join(' + ');
  const { problem } = makeFormula(source, NAMES);
  expect(problem).toMatchObject({ code: 'division-by-zero', from: source.length - 10 });
});
