import { expect, test } from 'vitest';
import { nameEntryChange, nameTickChange } from '../../src/page/change-words.ts';
import { createTestDesk } from './test-desk.ts';

const SHEET = `
\`\`\`table sets
set,ratios
Wide,"[3, 2]"
\`\`\`

\`\`\`given
gap = 0.150 in "Gap to set"
open = blank in "Open"
gears = pick "Wide" from sets.ratios "Gears"
note = "A. N. Other" "Fitted by"
\`\`\`
`;
const { given } = createTestDesk(SHEET);

test.each([
  ['gap', undefined, { text: '0.160', unit: 'in' }, 'Gap to set, 0.150 in to 0.160 in'],
  ['gap', { text: '4 mm', unit: 'in' }, undefined, 'Gap to set, 4 mm to 0.150 in'],
  ['gap', { text: '0.155' }, { text: '0.160' }, 'Gap to set, 0.155 in to 0.160 in'],
  ['gap', undefined, { text: '' }, 'Gap to set, 0.150 in to blank'],
  ['open', undefined, { text: '3 1/8', unit: 'in' }, 'Open, blank to 3 1/8 in'],
  ['gears', undefined, { text: '[2, 1]' }, 'Gears, Wide to [2, 1]'],
  ['note', undefined, { text: 'B. Else' }, 'Fitted by, A. N. Other to B. Else'],
])('a change of %s is named', (name, before, after, words) => {
  expect(nameEntryChange(given(name), before, after)).toBe(words);
});

test('a pasted book does not fill the button', () => {
  const words = nameEntryChange(given('gap'), undefined, { text: '9'.repeat(100_000), unit: 'in' });
  expect(words.length).toBeLessThan(100);
});

test('a tick is named by its step', () => {
  const step = { id: 'a', text: 'Stop fitted, and pulled by hand', tokens: [] };
  expect(nameTickChange(step, true)).toBe('tick “Stop fitted, and pulled by hand”');
  expect(nameTickChange(step, false)).toBe('untick “Stop fitted, and pulled by hand”');
});
