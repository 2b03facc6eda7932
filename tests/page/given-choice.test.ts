import { expect, test } from 'vitest';
import { createGivenChoice } from '../../src/page/given-choice.ts';
import { createTestDesk } from './test-desk.ts';

const SHEET = `
\`\`\`table springs "Springs"
spring,rate (N/mm)
Light,20
Heavy,30
\`\`\`

\`\`\`given
whole = pick "Heavy" from springs
rate = pick "Heavy" from springs.rate
width = 3 in
\`\`\`
`;

test('a given that is not picked has no choice', () => {
  const { desk, given } = createTestDesk(SHEET);
  expect(createGivenChoice(desk, given('width'), [])).toBeUndefined();
});

test('a whole row can only be picked', () => {
  const { desk, given } = createTestDesk(SHEET);
  const choice = createGivenChoice(desk, given('whole'), []);
  const options = [...(choice?.element.querySelectorAll('option') ?? [])];
  expect(options.map((option) => option.textContent)).toEqual(['Light', 'Heavy']);
  expect(choice?.refresh()).toBe(false);
});

test('typing your own starts from the row that was picked', () => {
  const { desk, given } = createTestDesk(SHEET);
  const choice = createGivenChoice(desk, given('rate'), [])!;
  document.body.replaceChildren(choice.element);
  const select = choice.element.querySelector('select')!;
  select.value = 'own';
  select.dispatchEvent(new Event('change'));
  expect(desk.entryOf(given('rate'))).toEqual({ text: '30' });
  expect(choice.refresh()).toBe(true);
});
