import { expect, test, vi } from 'vitest';
import { h } from '../../src/page/element.ts';
import { createSheetView } from '../../src/page/sheet-view.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `# Bolts

Some words.

\`\`\`given
width = 3 in "Width"
\`\`\`

## Formulas

\`\`\`work
twice = 2 * width as in
wrong = widht + 1 in
\`\`\`

\`\`\`caution "Eyes"
Goggles on.
\`\`\`

\`\`\`steps "Before"
- One
\`\`\`
`;

function open() {
  const { desk, sheet, given } = createTestDesk(SHEET);
  const view = createSheetView(desk, sheet);
  const page = h('main', {}, ...(view.nodes as Node[]));
  document.body.replaceChildren(page);
  return { desk, given, view, page };
}

test('narrative and blocks stand in the order of the sheet, under one title', async () => {
  const { page } = open();
  // Steps answer nothing by themselves: they come after the results.
  await vi.waitFor(() => expect(page.querySelector('.steps')).not.toBeNull(), 20_000);
  expect(textOf(page.querySelector('h1'))).toBe('10 Bolts');
  const order = [
    ...page.querySelectorAll('h1, h2, label[for=width], .work-line, .caution, .steps'),
  ];
  expect(order.map((one) => one.tagName)).toEqual([
    'H1',
    'LABEL',
    'H2',
    'DIV',
    'DIV',
    'DIV',
    'DIV',
  ]);
});

test('what is wrong in the sheet stands at its head, with its place', () => {
  const { page } = open();
  expect(textOf(page.querySelector('.problems'))).toMatch(/line 13.*widht.*did you mean width/);
  expect(page.querySelector('.problems')?.previousElementSibling?.tagName).toBe('H1');
});

test('only what shows a cell is refreshed', async () => {
  const { desk, given, view, page } = open();
  desk.enter(given('width'), { text: '4' });
  await desk.settled();
  view.refresh(new Set([given('width').index]));
  expect(textOf(page.querySelector('#twice strong'))).toBe('6 in');
  view.refreshAll();
  expect(textOf(page.querySelector('#twice strong'))).toBe('8 in');
});

test('an empty sheet is a title', () => {
  const { desk, sheet } = createTestDesk('');
  expect(createSheetView(desk, sheet).nodes).toHaveLength(1);
});
