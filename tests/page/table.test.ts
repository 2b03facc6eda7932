import { expect, test } from 'vitest';
import { createReferenceTable } from '../../src/page/table.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `
\`\`\`table bolts "Bolts on the shelf"
bolt,overall_length (in),ratios,note
Short,1.250,"[1, 2]","for the cover"
Medium,1 3/4,"[3, 4]",plain
\`\`\`
`;

function show() {
  const test = createTestDesk(SHEET);
  const element = test.show(createReferenceTable(test.desk, test.sheet, test.block('table')));
  const row = (i: number) =>
    [...element.querySelectorAll('tbody tr')[i]!.children].map((cell) => textOf(cell));
  return { ...test, element, row };
}

test('cells stand as they are written in the sheet, heads with their units', () => {
  const { element, row } = show();
  expect([...element.querySelectorAll('thead th')].map(textOf)).toEqual([
    'Bolt',
    'Overall length, in',
    'Ratios',
    'Note',
  ]);
  expect(row(1)).toEqual(['Medium', '1 3/4', '[3, 4]', 'plain']);
  expect(textOf(element.querySelector('caption'))).toBe('Bolts on the shelf');
});

test('on a metric page inches are converted', () => {
  const { desk, element, row } = show();
  desk.chooseSystem('metric');
  expect(textOf(element.querySelectorAll('thead th')[1])).toBe('Overall length, mm');
  expect(row(0)[1]).toBe('31.75');
});

test('the first cell of a row is its head', () => {
  const { element } = show();
  expect(element.querySelector('tbody th')?.getAttribute('scope')).toBe('row');
});

test('a table that could not be read leaves its place empty: the problems tell', () => {
  const { desk, sheet, block } = createTestDesk('```table\n```');
  const view = createReferenceTable(desk, sheet, block('table'));
  expect(view.element.textContent).toBe('');
  expect(desk.book.problems.length).toBeGreaterThan(0);
});

test('a sentence is told from a word, so that a narrow page gives it room', () => {
  const long = 'seven or eight words that go on for longer than a line of it';
  const { sheet, desk, block } = createTestDesk(
    `\`\`\`table bolts "Bolts"\nbolt,note,use\nShort,${long},plain\n\`\`\``,
  );
  const { element } = createReferenceTable(desk, sheet, block('table'));
  expect([...element.querySelectorAll('td')].map((cell) => cell.className)).toEqual(['wordy', '']);
});
