import { lexer } from 'marked';
import { expect, test } from 'vitest';
import { h } from '../../src/page/element.ts';
import { createInline, createNarrative } from '../../src/page/narrative.ts';

function render(markdown: string, titled = true): HTMLElement {
  return h('div', {}, ...createNarrative(lexer(markdown), { level: 1, titled }));
}

test('paragraphs, emphasis and code become elements', () => {
  expect(render('a *b* **c** `d` ~~e~~').innerHTML).toBe(
    '<p>a <em>b</em> <strong>c</strong> <code>d</code> <s>e</s></p>',
  );
});

test('a long name in code may break behind its underscores and brackets, and nowhere else', () => {
  const code = render('`dial_offset(readings, x)`').querySelector('code')!;
  expect(code.innerHTML).toBe('dial_<wbr>offset(<wbr>readings, x)');
  expect(code.textContent).toBe('dial_offset(readings, x)');
  expect(render('`2.5 mm`').querySelector('wbr')).toBeNull();
});

test('the title of the sheet is passed over once', () => {
  const page = render('# Title\n\n## One\n\n# Two', false);
  expect([...page.children].map((child) => child.outerHTML)).toEqual([
    '<h2>One</h2>',
    '<h2>Two</h2>',
  ]);
});

test('no level of heading is skipped on the way down', () => {
  const page = render('##### Deep\n\n###### Deeper\n\n## Up\n\n#### Down');
  expect([...page.children].map((child) => child.tagName)).toEqual(['H2', 'H3', 'H2', 'H3']);
});

test('lists hold their items, tight or loose, nested or numbered', () => {
  expect(render('- a\n- b\n  1. c').innerHTML).toBe(
    '<ul><li>a</li><li>b<ol><li>c</li></ol></li></ul>',
  );
  expect(render('3. a\n4. b').querySelector('ol')?.getAttribute('start')).toBe('3');
});

test('a table has headers with a scope', () => {
  const page = render('| a | b |\n|---|--:|\n| 1 | 2 |');
  expect(page.querySelector('th')?.getAttribute('scope')).toBe('col');
  expect(page.querySelectorAll('td')[1]?.className).toBe('number');
});

test('character references are read once', () => {
  expect(render('M8 &times; 1.25, &lt;b&gt; &amp;lt;').textContent).toBe('M8 × 1.25, <b> &lt;');
});

test.each([
  ['a script', '<script>window.hit = 1</script>'],
  ['a script within a line', 'before <script>window.hit = 1</script> after'],
  ['an image that listens', '<img src=x onerror="window.hit = 1">'],
  ['a style', '<style>body { display: none }</style>'],
  ['a form', '<form action="https://example.org"><input name=a></form>'],
  ['a frame', '<iframe src="https://example.org"></iframe>'],
  ['a vector image', '<svg onload="window.hit = 1"></svg>'],
])('%s is shown as the text that it is', (_, markdown) => {
  const page = render(markdown);
  document.body.append(page);
  expect(page.querySelector('script, img, style, form, input, iframe, svg')).toBeNull();
  expect(page.textContent).toContain(markdown.match(/<[^>]+>/)![0]);
  expect('hit' in window).toBe(false);
  page.remove();
});

test.each([
  '[words](javascript:window.hit=1)',
  '[words](<java\tscript:window.hit=1>)',
  '[words](&#106;avascript:window.hit=1)',
  '[words](data:text/html,x)',
])('%s leads nowhere and keeps its words', (markdown) => {
  const page = render(markdown);
  expect(page.querySelector('a')).toBeNull();
  expect(page.textContent).toContain('words');
});

test('a link outside says that it is one', () => {
  expect(render('[a](https://example.org/)').querySelector('a')?.rel).toBe(
    'noopener noreferrer external',
  );
});

test('a link to another sheet stays on the page', () => {
  const link = render('[gearing](20-gearing.md)').querySelector('a');
  expect(link?.getAttribute('href')).toBe('#/20-gearing');
  expect(link?.rel).toBe('');
});

test('a picture asks nobody for anything: its words stand in for it', () => {
  const page = render('![a gearbox](https://example.org/a.png)');
  expect(page.innerHTML).toBe('<p>[picture: a gearbox]</p>');
});

test('a step or caution may hold inline Markdown', () => {
  const tokens = (lexer('**same** side')[0] as { tokens?: never[] }).tokens;
  expect(h('p', {}, ...createInline(tokens)).innerHTML).toBe('<strong>same</strong> side');
  expect(createInline(undefined)).toEqual([]);
});
