import { describe, expect, test } from 'vitest';
import type { Spread } from '../../../src/sheet/spread/spread.ts';
import { studentT } from '../../../src/sheet/spread/student-t.ts';
import { judgeUnderDoubt } from '../../../src/sheet/spread/verdict-under-doubt.ts';
import type { Verdict } from '../../../src/sheet/verdict.ts';

/** A result of 10, as far off as its worst case, normal with this standard uncertainty. */
function spreadOf(worst: number, u: number, more: Partial<Spread> = {}): Spread {
  const reach = studentT(0.95, Number.POSITIVE_INFINITY) * u;
  return {
    value: 10,
    worst: { from: 10 - worst, to: 10 + worst, method: 'corners' },
    likely: { from: 10 - reach, to: 10 + reach, u, dof: Number.POSITIVE_INFINITY },
    shares: [],
    straight: true,
    ...more,
  };
}

function window(least?: number, most?: number): Verdict {
  return {
    verdict: 'pass',
    values: [10],
    margin: 0,
    worst: 0,
    ...(least === undefined ? {} : { least }),
    ...(most === undefined ? {} : { most }),
  };
}

describe('one number', () => {
  // Shares of the normal distribution beyond so many standard uncertainties: any table has them.
  test.each([
    ['the worst case inside', window(8, 12), spreadOf(2, 1), 'surely-pass', 1],
    ['the worst case on the limit', window(8), spreadOf(2, 1), 'surely-pass', 1],
    ['two u from one limit', window(8), spreadOf(3, 1), 'likely-pass', 0.97725],
    ['two u from both limits', window(8, 12), spreadOf(3, 1), 'likely-pass', 0.9545],
    ['one u from both limits', window(9, 11), spreadOf(3, 1), 'cannot-tell', 0.68269],
    ['on its limit', window(10), spreadOf(3, 1), 'cannot-tell', 0.5],
    ['two u beyond a limit', window(12), spreadOf(3, 1), 'likely-fail', 0.02275],
    ['the worst case outside', window(undefined, 6), spreadOf(3, 1), 'surely-fail', 0],
  ])('%s', (_, verdict, spread, expected, inside) => {
    const found = judgeUnderDoubt(verdict, [spread])!;
    expect(found.verdict).toBe(expected);
    expect(found.inside).toBeCloseTo(inside, 4);
  });
});

test('few readings make a wider distribution: what was likely cannot be told', () => {
  const likely = { from: 8, to: 12, u: 1, dof: 2 };
  expect(judgeUnderDoubt(window(8), [spreadOf(3, 1, { likely })])!.verdict).toBe('cannot-tell');
});

test('two readings that both lie inside do not make their mean sure', () => {
  const few = spreadOf(1, 1, { likely: { from: 10 - 12.7, to: 10 + 12.7, u: 1, dof: 1 } });
  const inside = judgeUnderDoubt(window(9, 11), [few])!;
  expect(inside.verdict).toBe('cannot-tell');
  expect(inside.inside).toBeCloseTo(0.5, 9);
  const outside = judgeUnderDoubt(window(11.1), [few])!;
  expect(outside.verdict).toBe('cannot-tell');
  expect(judgeUnderDoubt(window(-90, 110), [few])!.verdict).toBe('surely-pass');
  expect(judgeUnderDoubt(window(110), [few])!.verdict).toBe('surely-fail');
});

test('of a list the least sure element decides, wherever it stands', () => {
  const [sure, likely, less] = [spreadOf(1, 0.5), spreadOf(3, 1), spreadOf(3, 1.1)];
  for (const spreads of [
    [sure, likely, less],
    [less, likely, sure],
  ]) {
    const found = judgeUnderDoubt(window(8), spreads)!;
    expect(found.verdict).toBe('likely-pass');
    expect(found.inside).toBeCloseTo(0.96548, 4);
  }
});

test('a result that bends within its doubt has no probability', () => {
  const found = judgeUnderDoubt(window(8), [spreadOf(3, 1, { straight: false })]);
  expect(found).toEqual({ verdict: 'cannot-tell', inside: Number.NaN });
});

test('a result that bends is sure all the same where its worst case is', () => {
  const bent = spreadOf(3, 1, { straight: false });
  expect(judgeUnderDoubt(window(5), [bent])!.verdict).toBe('surely-pass');
  expect(judgeUnderDoubt(window(15), [bent])!.verdict).toBe('surely-fail');
});

test('a result that has no value somewhere within the doubt is never sure', () => {
  const gappy = spreadOf(3, 1, { worst: { from: 9, to: 11, method: 'corners', gap: true } });
  expect(judgeUnderDoubt(window(5), [gappy])!.verdict).toBe('cannot-tell');
});

test.each([
  ['a check without a verdict', { verdict: 'unknown', values: [] } as const, [spreadOf(1, 1)]],
  ['a result without doubt', window(8), []],
  ['a value that is to be one and the same', window(10, 10), [spreadOf(1, 1)]],
])('%s is not judged', (_, verdict, spreads) => {
  expect(judgeUnderDoubt(verdict, spreads)).toBeUndefined();
});
