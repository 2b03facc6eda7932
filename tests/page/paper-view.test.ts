import { expect, test, vi } from 'vitest';
import { h } from '../../src/page/element.ts';
import { type PaperOrder, printOnPaper } from '../../src/page/paper-view.ts';
import { createSheetView } from '../../src/page/sheet-view.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const FIRST = `# Bolts

Some words.

\`\`\`caution "Eyes"
Goggles on.
\`\`\`

\`\`\`given
width = 3 in "Width" how "Caliper."
\`\`\`

\`\`\`check
width between 1 in and 9 in "Fits"
\`\`\`
`;
const SECOND = FIRST.replace('# Bolts', '# Nuts');

function order(some: Partial<PaperOrder> = {}) {
  const { desk } = createTestDesk(FIRST, SECOND);
  const button = h('button', {}, 'Print');
  document.body.replaceChildren(h('main', {}, button));
  button.focus();
  const whole: PaperOrder = {
    sheets: desk.book.sheets,
    what: 'sheets',
    format: 'A4',
    narrative: true,
    working: true,
    ...some,
  };
  /** What stands on the paper at the moment in which it is printed. */
  const seen: Element[] = [];
  const print = vi.fn(() => void seen.push(document.querySelector('.paper')!));
  const done = printOnPaper(desk, whole, { render: createSheetView, print });
  return { button, done, print, seen };
}

const paper = () => document.querySelector('.paper');

test('all sheets are drawn before the first is printed', async () => {
  const { done, print, seen } = order();
  expect(print).not.toHaveBeenCalled();
  await done;
  expect(print).toHaveBeenCalledOnce();
  const titles = [...seen[0]!.querySelectorAll('h1')].map(textOf);
  expect(titles).toEqual(['10 Bolts', '20 Nuts']);
  expect(seen[0]!.querySelectorAll('.drawn > svg')).toHaveLength(2);
  expect(textOf(seen[0]!.querySelector('[role=status]'))).toBe('Ready to print.');
  dispatchEvent(new Event('afterprint'));
});

test('beside the head of the first sheet is the job as a code, and nowhere else', async () => {
  const { done, seen } = order();
  await done;
  const codes = [...seen[0]!.querySelectorAll('.paper-code')];
  expect(codes.map((code) => code.parentElement)).toEqual([seen[0]!.querySelector('.paper-sheet')]);
  expect(codes[0]!.querySelector('svg.qr')).not.toBeNull();
  dispatchEvent(new Event('afterprint'));
});

test('after the print the page is as it was, with the focus where it was', async () => {
  const { button, done } = order();
  await done;
  expect(paper()).not.toBeNull();
  dispatchEvent(new Event('afterprint'));
  expect(paper()).toBeNull();
  expect(document.adoptedStyleSheets).toEqual([]);
  expect(document.documentElement.classList.contains('on-paper')).toBe(false);
  expect(document.activeElement).toBe(button);
});

test('whoever goes back before it is drawn prints nothing', async () => {
  const { done, print } = order();
  const back = [...paper()!.querySelectorAll('button')].find(
    (one) => one.textContent === 'Back to the page',
  );
  back!.click();
  await done;
  expect(print).not.toHaveBeenCalled();
  expect(paper()).toBeNull();
});

test('the focus goes to the way back, and Escape is one too', async () => {
  const { button, done, print } = order();
  expect(document.activeElement?.textContent).toBe('Back to the page');
  dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape' }));
  await done;
  expect(print).not.toHaveBeenCalled();
  expect(document.activeElement).toBe(button);
});

test('without narrative the cautions are printed all the same', async () => {
  const { done, seen } = order({ narrative: false, working: false });
  await done;
  const text = textOf(seen[0]!);
  expect(text).toContain('Goggles on.');
  expect(text).not.toContain('Some words.');
  expect(seen[0]!.classList.contains('no-working')).toBe(true);
  dispatchEvent(new Event('afterprint'));
});

test('each sheet has pages of its own with its title, in the format that was asked for', async () => {
  const { done, seen } = order({ format: 'letter' });
  await done;
  const [rules] = document.adoptedStyleSheets;
  const text = [...rules!.cssRules].map((rule) => rule.cssText).join('\n');
  expect(text).toContain('10 Bolts');
  expect(text).toContain('20 Nuts');
  expect(text).toMatch(/size: letter/);
  const pages = [...seen[0]!.querySelectorAll('.paper-sheet')].map(({ classList }) => classList[1]);
  expect(pages).toEqual(['paper-page-0', 'paper-page-1']);
  dispatchEvent(new Event('afterprint'));
});

test('what cannot be laid says so, and the way back is open', async () => {
  const { desk, sheet } = createTestDesk(FIRST);
  const print = vi.fn();
  const render = () => {
    throw new Error('offline');
  };
  const whole: PaperOrder = {
    sheets: [sheet],
    what: 'sheets',
    format: 'A4',
    narrative: true,
    working: true,
  };
  await printOnPaper(desk, whole, { render, print });
  expect(print).not.toHaveBeenCalled();
  expect(textOf(paper()!.querySelector('[role=status]'))).toMatch(/could not be loaded/);
  dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape' }));
  expect(paper()).toBeNull();
});

test('a measuring sheet goes the same way', async () => {
  const { done, seen } = order({ what: 'measuring' });
  await done;
  expect(seen[0]!.querySelectorAll('.write-in')).toHaveLength(2);
  dispatchEvent(new Event('afterprint'));
  expect(paper()).toBeNull();
});
