import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isShut, meaningOf, verdictOf } from '../../src/sheet/verdict.ts';
import { block, makeSheet } from './made-book.ts';

function judge(givens: readonly string[], check: string) {
  const made = makeSheet(block('given', ...givens) + block('check', check));
  const [found] = made.book.checks;
  return { verdict: verdictOf(made.book, made.frame, found!), check: found! };
}
const verdict = (given: string, check: string) => judge([given], check).verdict;

describe('one number', () => {
  test.each([
    ['a = 3', 'a between 1 and 4', { verdict: 'pass', margin: 1, least: 1, most: 4 }],
    ['a = 1', 'a between 1 and 4', { verdict: 'pass', margin: 0 }],
    ['a = 0.5', 'a between 1 and 4', { verdict: 'fail', side: 'below', margin: 0.5 }],
    ['a = 6', 'a between 1 and 4', { verdict: 'fail', side: 'above', margin: 2 }],
    ['a = 3', 'a at least 1', { verdict: 'pass', margin: 2, least: 1 }],
    ['a = 3', 'a at most 1', { verdict: 'fail', side: 'above', margin: 2, most: 1 }],
    ['a = 3', 'a is 3', { verdict: 'pass', margin: 0, least: 3, most: 3 }],
    ['a = 3', 'a is 4', { verdict: 'fail', side: 'below', margin: 1 }],
    ['a = -3', 'a at least -3', { verdict: 'pass', margin: 0 }],
    ['a = 0', 'a at least 0', { verdict: 'pass', margin: 0 }],
  ])('%s: %s', (given, check, found) => {
    expect(verdict(given, check)).toMatchObject(found);
  });

  test('binary rounding does not fail what stands on its limit', () => {
    // 0.1 + 0.2 is 0.30000000000000004 to the machine.
    expect(verdict('a = 0.1 + 0.2', 'a at most 0.3').verdict).toBe('pass');
    expect(verdict('a = 0.3001', 'a at most 0.3').verdict).toBe('fail');
  });
});

describe('a list passes when every element does', () => {
  test.each([
    ['[2, 3, 1.5]', { verdict: 'pass', margin: 0.5, worst: 2 }],
    ['[2, 9, 0]', { verdict: 'fail', side: 'above', margin: 5, worst: 1 }],
    ['[2, 2]', { verdict: 'pass', margin: 1, worst: 0 }],
  ])('%s', (list, found) => {
    expect(verdict(`a = ${list}`, 'a between 1 and 4')).toMatchObject(found);
  });
});

describe('what is not known is neither passed nor failed', () => {
  test.each([
    ['a blank', ['a = blank'], 'a at least 1'],
    ['a blank limit', ['a = 3', 'b = blank'], 'a at least b'],
    ['one blank limit of two', ['a = 3', 'b = blank'], 'a between b and 4'],
    ['a blank to be equal to', ['a = 3', 'b = blank'], 'a is b'],
    ['a list of nothing', ['a = blank list'], 'a at least 1'],
    ['a limit that has no value', ['a = 3', 'b = 0'], 'a at most 1 / b'],
    ['a check with an error', ['a = 3'], 'a at least 1 mm'],
    ['a name that is nowhere', ['a = 3'], 'b at least 1'],
  ])('%s', (_, givens, check) => {
    expect(judge(givens, check).verdict.verdict).toBe('unknown');
  });
});

test('words are the same or they are not: there is no side', () => {
  const differ = judge(['a = "free"'], 'a is "tight" below "Ease it."');
  expect(differ.verdict).toEqual({ verdict: 'fail', values: [], margin: 0, worst: 0 });
  expect(verdict('a = "free"', 'a is "free"').verdict).toBe('pass');
});

describe('what a failure means, in the words of the sheet', () => {
  const words = 'a between 1 and 4 below "Too little." above "Too much."';
  test.each([
    ['a = 0', words, 'Too little.'],
    ['a = 9', words, 'Too much.'],
    ['a = 2', words, undefined],
    ['a = blank', words, undefined],
    ['a = 9', 'a at most 4 below "Too little."', undefined],
    ['a = "x"', 'a is "y" above "Not that."', 'Not that.'],
  ])('%s: %s', (given, line, meaning) => {
    const { verdict: found, check } = judge([given], line);
    expect(meaningOf(check, found)).toBe(meaning);
  });
});

test('a number passes where, and only where, it lies between the limits, and the margin tells how far', () => {
  const number = fc.integer({ min: -20, max: 20 });
  fc.assert(
    fc.property(number, number, fc.integer({ min: 1, max: 20 }), (a, least, width) => {
      const most = least + width;
      const found = verdict(`a = ${a}`, `a between ${least} and ${most}`);
      expect(found.verdict).toBe(a >= least && a <= most ? 'pass' : 'fail');
      if (found.verdict === 'unknown') return;
      const distance = Math.min(Math.abs(a - least), Math.abs(a - most));
      expect(found.margin).toBeCloseTo(distance, 12);
    }),
    { numRuns: 60 },
  );
});

test('limits that have passed each other let nothing through, and no meaning of the sheet is told for that', () => {
  const window = 'a between low and high below "too near" above "too far"';
  const shut = judge(['a = 3', 'low = 5', 'high = 4'], window);
  expect(shut.verdict).toMatchObject({ verdict: 'fail', least: 5, most: 4 });
  expect(isShut(shut.verdict)).toBe(true);
  expect(meaningOf(shut.check, shut.verdict)).toBeUndefined();
  const open = judge(['a = 3', 'low = 4', 'high = 5'], window);
  expect(isShut(open.verdict)).toBe(false);
  expect(meaningOf(open.check, open.verdict)).toBe('too near');
});
