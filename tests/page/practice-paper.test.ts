import { expect, test, vi } from 'vitest';
import { createPracticePaper } from '../../src/page/practice-paper.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `
# The sheet

\`\`\`given
deep = 3 in "Deep" from 2 in to 4 in to 0.001
high = 1 in "High" from 0.5 in to 1.5 in to 0.001
\`\`\`

\`\`\`work
gap = deep - high "Gap" as in to 0.001
\`\`\`

\`\`\`practice "The gap"
ask gap within 0.001 in "How wide?"
mistake deep + high "Added instead of taken off."
\`\`\`
`;

function open() {
  const made = createTestDesk(SHEET);
  const element = made.show(createPracticePaper(made.desk, made.sheet));
  const field = (id: string) => document.getElementById(id) as HTMLInputElement;
  const deal = () => element.querySelector('form')!.requestSubmit();
  return { ...made, element, field, deal };
}

test('problems and their answers stand apart, under the seed', () => {
  const { element } = open();
  const [problems, key] = [...element.querySelectorAll('section')];
  expect(textOf(problems)).toMatch(/practice.*Seed 1\./);
  expect(problems!.querySelectorAll('.problems-list > li')).toHaveLength(6);
  expect(key!.className).toBe('answer-key');
  expect(key!.querySelectorAll('li')).toHaveLength(6);
  const [deep, high] = [...problems!.querySelectorAll('dd')].map((each) =>
    Number.parseFloat(textOf(each)),
  );
  expect(Number.parseFloat(textOf(key!.querySelector('li')))).toBeCloseTo(deep! - high!, 9);
});

test('another seed deals other problems, the same seed the same', () => {
  const { element, field, deal } = open();
  const first = textOf(element.querySelector('.problems-list'));
  field('paper-seed').value = 'monday';
  deal();
  expect(textOf(element.querySelector('.problems-list'))).not.toBe(first);
  field('paper-seed').value = '1';
  deal();
  expect(textOf(element.querySelector('.problems-list'))).toBe(first);
});

test.each(['0', 'many', '1000'])('%s problems are told to be no number of them', (count) => {
  const { element, field, deal } = open();
  field('paper-count').value = count;
  deal();
  expect(textOf(element.querySelector('.error'))).toMatch(/From 1 to 60 problems/);
});

test('only the practice sheet is printed, and the page is itself again afterwards', () => {
  const print = vi.spyOn(window, 'print').mockImplementation(() => {
    expect(document.documentElement.dataset.print).toBe('practice');
    dispatchEvent(new Event('afterprint'));
  });
  open().element.querySelector<HTMLButtonElement>('button[type=button]')!.click();
  expect(print).toHaveBeenCalledOnce();
  expect(document.documentElement.dataset.print).toBeUndefined();
  print.mockRestore();
});

test('the instructor sees what was tried, which mistake it was and how long it took', () => {
  const { desk, sheet, element } = open();
  expect(textOf(element.querySelector('.practice-record'))).toMatch(/nobody has answered/);
  const attempt = { seed: 4, typed: '4 in', told: 'mistake', mistake: 0, seconds: 31 };
  desk.recordAttempt(sheet.name, 'The gap', attempt);
  desk.recordAttempt(sheet.name, 'The gap', { seed: 4, typed: '2', told: 'unit', seconds: 40 });
  const rows = [...element.querySelectorAll('.practice-record tbody tr')].map((row) =>
    [...row.children].map(textOf),
  );
  expect(rows).toEqual([
    ['The gap', '4', '4 in', 'Added instead of taken off.', '31 s'],
    ['The gap', '4', '2', 'right number, wrong unit', '40 s'],
  ]);
});
