import { expect, test } from 'vitest';
import { tallySheet } from '../../src/page/tally.ts';
import { createTestDesk } from './test-desk.ts';

const SHEET = `
\`\`\`given
a = 1 in
b = blank in
\`\`\`

\`\`\`check
a at most 2 in "Passes"
a at least 2 in "Fails"
b at most 2 in "Waits"
\`\`\`

\`\`\`steps "Sign-off"
- One
- Two
\`\`\`
`;

test('checks and steps are counted', () => {
  const { desk, sheet } = createTestDesk(SHEET);
  expect(tallySheet(desk, sheet)).toEqual({
    started: false,
    passes: 1,
    fails: 1,
    unknown: 1,
    stepsLeft: 2,
  });
});

test('a tick starts a sheet and leaves one step fewer', () => {
  const { desk, sheet, block } = createTestDesk(SHEET);
  desk.tick(sheet.name, block('steps').steps[0]!, true);
  expect(tallySheet(desk, sheet)).toMatchObject({ started: true, stepsLeft: 1 });
});
