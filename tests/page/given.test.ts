import { expect, test } from 'vitest';
import { createGivens } from '../../src/page/given.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `
\`\`\`given
width = 3.212 in "Width" how "Caliper." source "invented"
width = 4 in "Width again"
note = "A. N. Other" "Fitted by"
\`\`\`
`;
const TAKER = `
\`\`\`from 10-sheet
width
\`\`\`
`;

test('each given is a row with its label, and its notes beside it', () => {
  const { desk, sheet, block, show } = createTestDesk(SHEET, TAKER);
  const element = show(createGivens(desk, sheet, block('given')));
  const labels = [...element.querySelectorAll('label')].map(textOf);
  expect(labels).toEqual(['Width', 'Fitted by']);
  expect(textOf(element.querySelector('.margin'))).toBe(
    'Where it comes frominventedCarried onto 20 20-sheet',
  );
});

test('a name that was taken already has no second field: the problems tell', () => {
  const { desk, sheet, block, show } = createTestDesk(SHEET);
  const element = show(createGivens(desk, sheet, block('given')));
  expect(element.querySelectorAll('#width')).toHaveLength(1);
  expect(desk.book.problems).toHaveLength(1);
});
