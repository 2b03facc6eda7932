import { describe, expect, test } from 'vitest';
import { nameKind } from '../../src/language/kind.ts';
import { makeFormula, problemOf } from './made-formula.ts';

const NAMES = {
  gap: '3 in',
  shims: '[1, 2] mm',
  ratios: '[3, 2, 1]',
  name: '"Heavy"',
  gears: '["1st", "2nd"]',
  good: 'true',
  lost_gap: 'lost in',
};

describe('the kind of a call follows from what it is given', () => {
  test.each([
    ['abs(gap)', 'length'],
    ['abs(shims)', 'list of length'],
    ['sqrt(gap * gap)', 'length'],
    ['sqrt(gap)', 'length^0.5'],
    ['round(gap, 1 mm)', 'length'],
    ['round(gap, shims)', undefined],
    ['min(gap, shims, 1 mm)', 'length'],
    ['sum(shims)', 'length'],
    ['count(gears)', 'plain number'],
    ['first(gears)', 'text'],
    ['first(shims)', 'length'],
    ['without_last(gears)', 'list of text'],
    ['without_last(shims)', 'list of length'],
    ['ordinals(shims)', 'list of text'],
    ['interpolate(shims, [1 s, 2 s], gap)', 'time'],
    ['interpolate(shims, [1 s, 2 s], shims)', 'list of time'],
    ['atan2(gap, 1 mm)', 'angle'],
    ['exp([])', 'list of plain number'],
  ])('%s is %s', (source, kind) => {
    const found = makeFormula(source, NAMES).checked.kind;
    expect(found && nameKind(found)).toBe(kind);
  });
});

describe('what does not fit a parameter is told with the parameter', () => {
  test.each([
    ['abs(name)', 'value of abs needs a quantity or a list of them, not text'],
    ['abs(good)', 'value of abs needs a quantity or a list of them, not true or false'],
    ['sum(gap)', 'list of sum needs a list of quantities, not length'],
    ['sum(gears)', 'list of sum needs a list of quantities, not list of text'],
    ['count(gap)', 'list of count needs a list, not length'],
    ['item(shims, shims)', 'place of item needs one quantity, not list of length'],
    ['item(shims, gap)', 'place of item needs plain number, not gap (length)'],
    ['exp(gap)', 'value of exp needs plain number, not gap (length)'],
    ['min(gap, 1 s)', 'values of min needs length, not 1 s (time)'],
    ['largest_up_to(shims, 1 s)', 'limit of largest_up_to needs length, not 1 s (time)'],
    ['round(gap, 1 s)', 'step of round needs length, not 1 s (time)'],
    ['round(gap)', 'round without its step needs a plain number, not gap (length)'],
  ])('%s', (source, message) => {
    expect(problemOf(source, NAMES)).toMatchObject({ message });
  });

  test('the place is that of the argument', () => {
    expect(problemOf('min(gap, 1 s)', NAMES)).toMatchObject({ from: 9, to: 12 });
  });

  test('an argument that is itself at fault is told once, by itself', () => {
    const { checked } = makeFormula('abs(gap + 1 s)', NAMES);
    expect(checked.problems.map(({ code }) => code)).toEqual(['dimension-mismatch']);
  });

  test('a cell that is at fault elsewhere is not blamed here', () => {
    const { checked } = makeFormula('abs(lost_gap)', NAMES);
    expect(checked.problems).toEqual([]);
  });
});
