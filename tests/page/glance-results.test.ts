import { expect, test } from 'vitest';
import { chooseResults } from '../../src/page/glance-results.ts';
import { createTestDesk } from './test-desk.ts';

const WORKED = `# A
\`\`\`given
gap = 3 in
\`\`\`
\`\`\`work
half = gap / 2
rest = half - 1 in
twist = half / 1 in positive "Out." negative "In."
judged = gap * 2
taken = gap * 3
steps = [1, 2] * gap
\`\`\`
\`\`\`check
judged at least 1 in
\`\`\`
`;

const TAKER = `# B
\`\`\`from 10-sheet
taken
\`\`\`
`;

test('what tells one to do something comes first, then what is carried on, then what ends the sum', () => {
  const { desk, sheet } = createTestDesk(WORKED, TAKER);
  const names = (most: number) => chooseResults(desk.book, sheet, most).map(({ name }) => name);
  expect(names(1)).toEqual(['twist']);
  expect(names(2)).toEqual(['twist', 'taken']);
  expect(names(9)).toEqual(['rest', 'twist', 'taken']);
});

test('where nothing is worked, what was carried in is shown', () => {
  const { desk } = createTestDesk(WORKED, TAKER);
  const names = chooseResults(desk.book, desk.book.sheets[1]!, 4).map(({ name }) => name);
  expect(names).toEqual(['taken']);
});
