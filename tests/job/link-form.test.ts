import { expect, test } from 'vitest';
import { headOfLink, inferLinkKind, isLink } from '../../src/job/link-form.ts';

test.each([['#/20-gearing'], ['#'], [''], ['#jobs'], ['#/jobs'], ['#sheets'], ['#/sheet=1']])(
  '%j is no link',
  (hash) => {
    expect(isLink(hash)).toBe(false);
  },
);

test.each([
  ['#job=1.2.3.4', 'job'],
  ['#job=', 'job'],
  ['#jo', 'job'],
  ['#j', 'job'],
  ['#sheet=1.2.3.4', 'sheet'],
  ['#sheet', 'sheet'],
  ['#s', 'sheet'],
])('%j is a link to a %s, or the beginning of one', (hash, kind) => {
  expect(inferLinkKind(hash)).toBe(kind);
  expect(isLink(hash)).toBe(true);
});

test('a link is known by its head', () => {
  expect([headOfLink('job'), headOfLink('sheet')]).toEqual(['#job=', '#sheet=']);
});
