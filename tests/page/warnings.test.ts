import { expect, test } from 'vitest';
import { createWarnings } from '../../src/page/warnings.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `# A
\`\`\`given
angle = 3 deg
\`\`\`
\`\`\`work
twice = 2 * angle valid when angle < 6 deg "Small angles only."
\`\`\`
`;

test('a number within its formula’s range stands without a word', () => {
  const { desk } = createTestDesk(SHEET);
  expect(desk.book.problems).toEqual([]);
  expect(createWarnings(desk, desk.book.find('10-sheet', 'twice')!)).toEqual([]);
});

test('a number outside of it says so, and stands all the same', async () => {
  const { desk, given } = createTestDesk(SHEET);
  desk.enter(given('angle'), { text: '8 deg' });
  await desk.settled();
  const twice = desk.book.find('10-sheet', 'twice')!;
  expect(createWarnings(desk, twice).map(textOf)).toEqual([
    'Outside what this is good for: Small angles only.',
  ]);
  expect(desk.outcomeOf(twice.index).state).toBe('value');
});
