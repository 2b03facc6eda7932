import { expect, test } from 'vitest';
import type { FindRecord } from '../../src/cli/find-record.ts';
import { formatFound } from '../../src/cli/format-found.ts';

const RECORD = {
  sentence: 'Axle 3 gives top 2400 rpm.',
  stocked: [],
  problems: [],
} as unknown as FindRecord;
const SHEET = { title: 'Gears' } as never;

test('the answer stands under the title', () => {
  expect(formatFound(SHEET, RECORD)).toBe('Gears\n\nAxle 3 gives top 2400 rpm.\n');
});

test('what is to be had stands in columns, and a long list is cut with its count', () => {
  const stocked = Array.from({ length: 14 }, (_, i) => ({
    name: `${i}`,
    given: i,
    result: i,
    text: `${i} rpm`,
  }));
  const out = formatFound(SHEET, { ...RECORD, stocked });
  expect(out).toContain('  0   gives 0 rpm\n');
  expect(out).toMatch(/ {2}and 2 more\n$/);
});

test('problems stand last', () => {
  const problems = [{ code: 'x', message: 'is wrong', cell: '', place: 'a.md:1:2' }];
  expect(formatFound(SHEET, { ...RECORD, problems })).toMatch(
    /\nProblems\n {2}a\.md:1:2: is wrong\n$/,
  );
});
