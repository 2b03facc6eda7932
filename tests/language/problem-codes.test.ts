import { describe, expect, test } from 'vitest';
import { PROBLEMS } from '../../src/language/problem-codes.ts';
import { readCases } from '../support/case-files.ts';
import { readTree } from '../support/source-tree.ts';

/** Codes that only a caller outside the sheet can meet, and where their text is matched. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  'entered-twice': 'tests/cli/solve.test.ts',
  'entered-result': 'tests/cli/solve.test.ts',
  'unknown-given': 'tests/cli/enter-givens.test.ts',
  'unreadable-job': 'tests/cli/job-check.test.ts',
};

/** Every expectation of every case of the language and of sheets. */
const EXPECTATIONS = [
  ...readCases('tests/language/cases', '#').values(),
  ...readCases('tests/sheet/cases', '===').values(),
].flatMap((cases) => cases.flatMap(({ expected }) => expected));

describe('each problem that there is', () => {
  test.each(Object.keys(PROBLEMS))('%s is met by a case that matches its text', (code) => {
    const place = ELSEWHERE[code];
    const found =
      place === undefined
        ? EXPECTATIONS.filter((line) => line.includes(` ${code} (`) || line.startsWith(`${code} (`))
        : [...readTree('tests/cli', ['.ts'])].filter(
            ([path, text]) => path === place && text.includes(code),
          );
    expect(found.length).toBeGreaterThan(0);
  });
});

describe('sentences', () => {
  test.each([
    ['add', 'cannot add a to b'],
    ['subtract', 'cannot subtract a from b'],
    ['compare', 'cannot compare a with b'],
    ['choose between', 'cannot choose between a and b'],
    ['list together', 'cannot list together a and b'],
  ])('to %s joins its two sides', (action, sentence) => {
    expect(PROBLEMS['dimension-mismatch']({ action, left: 'a', right: 'b' })).toBe(sentence);
  });

  test('one value, several values', () => {
    const sentence = (given: number) =>
      PROBLEMS['argument-count']({ name: 'f', takes: 'x', given });
    expect([0, 1, 2].map(sentence)).toEqual([
      'f takes x, 0 values given',
      'f takes x, 1 value given',
      'f takes x, 2 values given',
    ]);
  });

  test('begin with a small letter or with what is quoted, and end without a full stop', () => {
    for (const line of EXPECTATIONS) {
      const [, message] = / \([^)]*\) (.*)$/.exec(line) ?? [];
      if (message === undefined || !/^(?:problem|error)/.test(line)) continue;
      expect(message).toMatch(/^[^A-Z]/);
      expect(message).not.toMatch(/\.$/);
    }
  });
});
