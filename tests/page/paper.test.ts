import { expect, test, vi } from 'vitest';
import { createPaper } from '../../src/page/paper.ts';
import { createSheetView } from '../../src/page/sheet-view.ts';
import { createTestDesk } from './test-desk.ts';

test('what goes on paper can be chosen once it is opened', async () => {
  const { desk, sheet, show } = createTestDesk('# Bolts\n\nWords.\n');
  const element = show(createPaper(desk, sheet, createSheetView)!) as HTMLDetailsElement;
  expect(element.querySelector('select')).toBeNull();
  element.open = true;
  await vi.waitFor(() => expect(element.querySelectorAll('select')).toHaveLength(4), 20_000);
});

test('an empty sheet is not printed', () => {
  const { desk, sheet } = createTestDesk('');
  expect(createPaper(desk, sheet, createSheetView)).toBeUndefined();
});
