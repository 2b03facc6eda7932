import { expect, test } from 'vitest';
import { carriedNotes, titleOf } from '../../src/page/carried.ts';
import { createMargin } from '../../src/page/margin.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const ORIGIN = '# Bearing\n\n```given\ngap = 0.150 in\n```';
const TAKER = '# Pedal\n\n```from 10-sheet\ngap\n```';

test('a value tells to which sheets it is carried, with links', () => {
  const { desk, given } = createTestDesk(ORIGIN, TAKER, TAKER);
  const margin = createMargin(carriedNotes(desk, given('gap')));
  expect(textOf(margin)).toBe('Carried onto 20 Pedal, 30 Pedal');
  expect(margin?.querySelector('a')?.getAttribute('href')).toBe('#/20-sheet/gap');
});

test('a value that stays has no note', () => {
  const { desk, given } = createTestDesk(ORIGIN);
  expect(carriedNotes(desk, given('gap'))).toEqual([]);
});

test('a sheet that there is not keeps its name', () => {
  const { desk } = createTestDesk(ORIGIN);
  expect(titleOf(desk, '10-sheet')).toBe('10 Bearing');
  expect(titleOf(desk, '99-none')).toBe('99-none');
});
