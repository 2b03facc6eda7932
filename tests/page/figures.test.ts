import { expect, test } from 'vitest';
import { createFigures } from '../../src/page/figures.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `# Bench

\`\`\`given
reading = 3.2 in "Reading" to 0.001
car = "Estate" "Car"
\`\`\`

\`\`\`figures "Set"
reading
car
\`\`\`
`;

function show(source: string) {
  const made = createTestDesk(source);
  const element = made.show(createFigures(made.desk, made.block('figures')));
  const row = (i: number) =>
    [...element.querySelectorAll('tbody tr')[i]!.children].map((cell) => textOf(cell));
  return { ...made, element, row };
}

test('a row is a figure with its unit, how it is known and its sheet', () => {
  const { element, row } = show(SHEET);
  expect(textOf(element.querySelector('caption'))).toBe('Set');
  expect(row(0)).toEqual(['Reading', '3.200', 'in', 'assumed', '10 Bench']);
});

test('what a person types is entered, and the table follows', () => {
  const { desk, given, row } = show(SHEET);
  desk.enter(given('reading'), { text: '3.3' });
  expect(row(0)).toEqual(['Reading', '3.300', 'in', 'entered', '10 Bench']);
});

test('the sheet is a link to where the figure stands', () => {
  const link = show(SHEET).element.querySelector('tbody a')!;
  expect(link.getAttribute('href')).toContain('reading');
});

test('numbers stand flush right, words do not', () => {
  const cells = show(SHEET).element.querySelectorAll('tbody tr td:nth-child(2)');
  expect([...cells].map((cell) => cell.className)).toEqual(['number', 'words']);
});

test('a table that cannot be says why', () => {
  const { element } = show(SHEET.replace('\ncar\n```\n', '\ncarr\n```\n'));
  expect(textOf(element)).toMatch(/^There is no table: no value is called carr/);
});
