import { expect, test } from 'vitest';
import { createFrameDesk } from '../../src/page/frame-desk.ts';
import { createFrame } from '../../src/sheet/create-frame.ts';
import { solve } from '../../src/sheet/solve.ts';
import { openResult } from './made-result.ts';

test('values are those of the frame, whatever stands on the page', () => {
  const { desk, given, cell } = openResult();
  const frame = createFrame(desk.book);
  solve(desk.book, frame);
  desk.enter(given('wheel'), { text: '500' });
  const other = createFrameDesk(desk, frame);
  expect(other.frame()).toBe(frame);
  expect(other.outcomeOf(cell('wheel').index)).toMatchObject({ value: expect.closeTo(104.72, 2) });
  expect(other.entryOf(given('wheel'))).toBeUndefined();
  expect(other.readingOf(given('wheel'))).toMatchObject({ state: 'value' });
});
