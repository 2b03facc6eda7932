import { expect, test } from 'vitest';
import { createTrouble, findRoot } from '../../src/page/waits.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const OPEN = `
\`\`\`from 20-sheet
width as carried
\`\`\`

\`\`\`work
a = carried + 1 in
b = a + 1 in
\`\`\`
`;
const ORIGIN = `
\`\`\`given
width = 3 in "Width"
\`\`\`
`;

test('a cell with a value has no trouble', () => {
  const { desk } = createTestDesk(OPEN, ORIGIN);
  expect(createTrouble(desk, desk.book.find('10-sheet', 'b')!)).toBeUndefined();
});

test('the one to be put right is at the end of the line, on whatever sheet', async () => {
  const { desk } = createTestDesk(OPEN, ORIGIN);
  const width = desk.book.find('20-sheet', 'width')!;
  desk.enter(width as never, { text: 'wide' });
  await desk.settled();
  const last = desk.book.find('10-sheet', 'b')!;
  expect(findRoot(desk, last)).toBe(width);
  const trouble = createTrouble(desk, last);
  expect(textOf(trouble)).toBe('waits for Width, which has no value');
  expect(trouble?.querySelector('a')?.getAttribute('href')).toBe('#/20-sheet/width');
});

test('what is blank says so', () => {
  const { desk, given } = createTestDesk(ORIGIN);
  desk.enter(given('width'), { text: '' });
  expect(textOf(createTrouble(desk, given('width')))).toBe('left blank');
});

test('cells of a loop are told once and do not send each other round', () => {
  const { desk } = createTestDesk('```work\na = b + 1\nb = a + 1\n```');
  const trouble = createTrouble(desk, desk.book.find('10-sheet', 'a')!);
  expect(textOf(trouble)).toMatch(/a → b → a/);
});
