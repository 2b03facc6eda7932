import { expect, test } from 'vitest';
import { pageName, paperRules, quoteCss } from '../../src/page/paper-rules.ts';

/** What the browser reads between the quotes. */
function readBack(quoted: string): string {
  const element = document.createElement('p');
  document.body.replaceChildren(element);
  const rules = new CSSStyleSheet();
  rules.replaceSync(`p::before { content: ${quoted}; }`);
  document.adoptedStyleSheets = [rules];
  const read = getComputedStyle(element, '::before').content;
  document.adoptedStyleSheets = [];
  return JSON.parse(read);
}

test.each([
  'Quarry Lane estate',
  'A "quoted" car',
  "Bob's",
  'Größe · 24,69″',
  'half \\ a slash',
  '"; } * { display: none } a::before { content: "',
  '<style>*{}</style>',
  '車',
])('%s stands in a margin as it is', (words) => {
  expect(readBack(quoteCss(words))).toBe(words);
});

test('a line break cannot end the quotes', () => {
  expect(quoteCss('one\ntwo')).toBe('"one\\a two"');
});

test('each section has pages of its own, in the format that was asked for', () => {
  const rules = new CSSStyleSheet();
  rules.replaceSync(paperRules('letter', ['20 Gearing', '"; } * { color: red } "']));
  const [every, first, where, second, ...rest] = [...rules.cssRules].map((rule) => rule.cssText);
  expect(every).toMatch(/^@page \{ size: letter/);
  expect(first).toMatch(/^@page paper-page-0 \{.*size: letter.*content: "20 Gearing"/s);
  expect(where).toBe(`.${pageName(0)} { page: paper-page-0; }`);
  expect(second).toMatch(/^@page paper-page-1/);
  expect(rest).toHaveLength(1);
});
