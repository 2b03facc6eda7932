import { expect, test } from 'vitest';
import { describeVerdictUnderDoubt } from '../../src/page/doubt.ts';
import { createTestDesk } from './test-desk.ts';

const CASES = [
  ['3.00 ± 0.01 in', 'at most 3.5 in', /^Inside whatever the readings are/],
  ['3.00 ± 0.01 in', 'at most 3.0001 in', /^Cannot be told with this measuring/],
  ['3.00 ± 0.01 in', 'at most 2.5 in', /^Outside whatever the readings are/],
] as const;

test.each(CASES)('%s, %s', async (reading, window, words) => {
  const { desk, given } = createTestDesk(
    `# A\n\`\`\`given\ngap = ${reading}\n\`\`\`\n\`\`\`check\ngap ${window}\n\`\`\`\n`,
  );
  await desk.settled();
  const verdict = desk.verdictOf(desk.book.checks[0]!);
  const spreads = desk.spreadOf(given('gap').index);
  expect(describeVerdictUnderDoubt(verdict, spreads)).toMatch(words);
});

test('where nothing is in doubt, nothing is said', async () => {
  const { desk } = createTestDesk(
    '# A\n```given\ngap = 3 in\n```\n```check\ngap at most 4 in\n```\n',
  );
  await desk.settled();
  const verdict = desk.verdictOf(desk.book.checks[0]!);
  expect(describeVerdictUnderDoubt(verdict, [])).toBeUndefined();
});
