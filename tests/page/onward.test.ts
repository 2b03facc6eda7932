import { expect, test } from 'vitest';
import { createOnward } from '../../src/page/onward.ts';
import { createTestDesk } from './test-desk.ts';

const { sheets } = createTestDesk('# One', '# Two', '# Three').desk.book;

test.each([
  [0, ['Two →']],
  [1, ['← One', 'Three →']],
  [2, ['← Two']],
])('from sheet %i it goes on to %j', (place, words) => {
  const links = [...createOnward(sheets, sheets[place]!).querySelectorAll('a')];
  expect(links.map((link) => link.textContent)).toEqual(words);
});
