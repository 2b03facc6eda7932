import { expect, test } from 'vitest';
import { findForbidden } from '../support/forbidden.ts';
import { readTree } from '../support/source-tree.ts';

test('nothing in src turns text into code or markup', () => {
  expect(findForbidden(readTree('src', ['.ts', '.js']))).toEqual([]);
});

test.each([
  ['eval', "eval('1')"],
  ['eval', "globalThis.eval('1')"],
  ['Function', "new Function('return 1')"],
  ['Function', "Function('return 1')()"],
  ['innerHTML', "a.innerHTML = '<b>'"],
  ['innerHTML', "a['innerHTML'] = '<b>'"],
  ['outerHTML', "a.outerHTML = '<b>'"],
  ['insertAdjacentHTML', "a.insertAdjacentHTML('beforeend', '<b>')"],
  ['document.write', "document.write('<b>')"],
])('the check finds %s in: %s', (name, text) => {
  expect(findForbidden(new Map([['src/a.ts', `\n${text};`]]))).toEqual([`src/a.ts:2 uses ${name}`]);
});

test('words in comments, texts and longer names do not count', () => {
  const text = "// eval()\nconst evaluate = 'innerHTML'; evaluate.length; type F = Function;";
  expect(findForbidden(new Map([['src/a.ts', text]]))).toEqual([]);
});
