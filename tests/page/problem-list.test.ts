import { expect, test } from 'vitest';
import type { Problem } from '../../src/language/problem.ts';
import { createProblemList, formatPlace } from '../../src/page/problem-list.ts';

const place = { file: '20-gearing.md', line: 41, column: 7 };
const problem = {
  code: 'unknown-name',
  message: 'no value is called "axel"',
  from: 0,
  to: 4,
  place,
} as Problem;

test('a sheet in order has no list', () => {
  expect(createProblemList([])).toBeUndefined();
});

test('each problem stands with its place', () => {
  const list = createProblemList([problem, problem]);
  expect(list?.textContent).toContain('2 things are wrong in this sheet.');
  expect(list?.querySelector('li')?.textContent).toBe(
    '20-gearing.md, line 41, column 7no value is called "axel"',
  );
});

test('one problem is one problem', () => {
  expect(createProblemList([problem])?.textContent).toContain('One thing is wrong');
});

test('a place counts lines and columns from 1', () => {
  expect(formatPlace(place)).toBe('20-gearing.md, line 41, column 7');
});
