import { expect, test } from 'vitest';
import { findCell } from '../../src/page/desk.ts';
import { createTestDesk } from './test-desk.ts';

test('a cell is found by its sheet and name', () => {
  const { desk } = createTestDesk('```given\nwidth = 3 in\n```');
  expect(findCell(desk, '10-sheet', 'width')?.name).toBe('width');
  expect(findCell(desk, '10-sheet', 'constructor')).toBeUndefined();
});
