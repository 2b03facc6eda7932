import { expect, test, vi } from 'vitest';
import { createPracticeFoot } from '../../src/page/practice-foot.ts';
import { createTestDesk } from './test-desk.ts';

const GIVEN = '```given\nx = 1 in from 1 in to 2 in to 0.1\n```\n\n```work\ny = 2 * x\n```\n';
const ASK = '\n```practice "Twice"\nask y within 0.1 in "How much?"\n```\n';

test('a sheet without questions has none to print', () => {
  const { desk, sheet } = createTestDesk(GIVEN);
  expect(createPracticeFoot(desk, sheet)).toBeUndefined();
});

test('the practice sheet comes when it is opened', async () => {
  const { desk, sheet, show } = createTestDesk(GIVEN + ASK);
  const element = show(createPracticeFoot(desk, sheet)!) as HTMLDetailsElement;
  expect(element.querySelector('form')).toBeNull();
  element.open = true;
  await vi.waitFor(() => expect(element.querySelector('.answer-key')).not.toBeNull());
});
