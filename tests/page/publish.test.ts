import { expect, test, vi } from 'vitest';
import { createPublish } from '../../src/page/publish.ts';
import { PRINTED } from './made-publish.ts';
import { createTestDesk } from './test-desk.ts';

test('a sheet without figures has nothing to print', () => {
  const { desk, sheet } = createTestDesk('# Words alone');
  expect(createPublish(desk, sheet)).toBeUndefined();
});

test('what prints comes when it is opened, and not before', async () => {
  const { desk, sheet, show } = createTestDesk(PRINTED);
  const element = show(createPublish(desk, sheet)!) as HTMLDetailsElement;
  expect(element.querySelector('button')).toBeNull();
  element.open = true;
  await vi.waitFor(() => expect(element.querySelector('button')).not.toBeNull(), 20_000);
});
