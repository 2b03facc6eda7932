import { expect, test } from 'vitest';
import { fail } from '../../src/language/problem.ts';

test('a problem has its code, its sentence and its place, and nothing else yet', () => {
  const where = { from: 3, to: 7, type: 'name' };
  expect(fail('unknown-name', where, { name: 'gpa', near: ['gap'] })).toEqual({
    code: 'unknown-name',
    message: 'no value is called gpa; did you mean gap?',
    from: 3,
    to: 7,
  });
});

test('a problem without details', () => {
  expect(fail('overflow', { from: 0, to: 1 }, undefined).message).toMatch(/too large/);
});
