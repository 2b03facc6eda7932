import { expect, test } from 'vitest';
import { hrefOf, parseDestination, sheetHref } from '../../src/page/link.ts';

test('a sheet and a cell have an address', () => {
  expect(sheetHref('70-release-bearing')).toBe('#/70-release-bearing');
  expect(sheetHref('70-release-bearing', 'gap')).toBe('#/70-release-bearing/gap');
});

test('an address is read back', () => {
  expect(parseDestination('#/20-gearing')).toEqual({ sheet: '20-gearing' });
  expect(parseDestination('#/20-gearing/redline')).toEqual({
    sheet: '20-gearing',
    cell: 'redline',
  });
});

test.each(['', '#', '#/', '#main', '#/a/b/c'])('"%s" names no sheet', (hash) => {
  expect(parseDestination(hash)).toBeUndefined();
});

test('a broken escape is no reason to fall over', () => {
  expect(parseDestination('#/%E0%A4%A')).toEqual({ sheet: '%E0%A4%A' });
});

test.each([
  ['20-gearing.md', '#/20-gearing'],
  ['./20-gearing.md#redline', '#/20-gearing/redline'],
  ['#/20-gearing', '#/20-gearing'],
  ['https://example.org/a', 'https://example.org/a'],
  ['http://example.org/', 'http://example.org/'],
])('%s leads to %s', (address, href) => {
  expect(hrefOf(address)).toBe(href);
});

test.each([
  'javascript:alert(1)',
  'JaVaScRiPt:alert(1)',
  ' javascript:alert(1)',
  'java\nscript:alert(1)',
  'data:text/html,<script>alert(1)</script>',
  'vbscript:x',
  'file:///etc/passwd',
  'blob:https://example.org/1',
  '//example.org',
  '../secret.md',
  '',
])('%j is not followed', (address) => {
  expect(hrefOf(address)).toBeUndefined();
});
