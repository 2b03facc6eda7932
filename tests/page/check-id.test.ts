import { expect, test } from 'vitest';
import { checkId } from '../../src/page/check-id.ts';
import { createTestDesk } from './test-desk.ts';

test('two checks of one value stand at two places', () => {
  const { desk } = createTestDesk(`# A
\`\`\`given
gap = 3 in
\`\`\`
\`\`\`check
gap at least 1 in
gap at most 2 in
\`\`\`
`);
  expect(desk.book.checks.map(checkId)).toEqual(['check-6', 'check-7']);
});
