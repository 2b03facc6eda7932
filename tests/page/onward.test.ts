import { expect, test } from 'vitest';
import { createOnward } from '../../src/page/onward.ts';
import { createTestDesk } from './test-desk.ts';

const { sheets } = createTestDesk('# One', '# Two', '# Three').desk.book;

test.each([
  [0, ['Two']],
  [1, ['One', 'Three']],
  [2, ['Two']],
])('from sheet %i it goes on to %j', (place, words) => {
  const links = [...createOnward(sheets, sheets[place]!).querySelectorAll('a')];
  expect(links.map((link) => link.textContent)).toEqual(words);
});

test('the arrow stands on the side that it points to', () => {
  const [before, after] = createOnward(sheets, sheets[1]!).querySelectorAll('a');
  expect(before!.firstElementChild?.tagName).toBe('svg');
  expect(before!.firstChild).toBe(before!.firstElementChild);
  expect(after!.lastChild).toBe(after!.lastElementChild);
});
