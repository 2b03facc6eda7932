import { expect, test } from 'vitest';
import { isLink } from '../../src/job/link-form.ts';

test.each([['#/20-gearing'], ['#'], [''], ['#jobs'], ['#/jobs']])('%j is no link', (hash) => {
  expect(isLink(hash)).toBe(false);
});

test.each([['#job=1.2.3.4'], ['#job='], ['#jo'], ['#j']])(
  '%j is a link or the beginning of one',
  (hash) => {
    expect(isLink(hash)).toBe(true);
  },
);
