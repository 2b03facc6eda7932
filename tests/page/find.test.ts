import { expect, test } from 'vitest';
import { createFinds } from '../../src/page/find.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const sheetWith = (question: string) => `# A
\`\`\`given
axle = 3.5 "Axle ratio" from 2 to 5 to 0.01
speed = 1000 rpm "Shaft"
\`\`\`
\`\`\`work
engine = axle * speed "Engine speed" as rpm to 10
\`\`\`
\`\`\`find "Which axle?"
${question}
\`\`\`
`;

function open(question: string) {
  const made = createTestDesk(sheetWith(question));
  return { ...made, element: made.show(createFinds(made.desk, made.sheet, made.block('find'))) };
}

test('a question asked backwards is answered in words', () => {
  const { element } = open('axle so that engine is 2000 rpm');
  expect(element.getAttribute('aria-label')).toBe('Which axle?');
  expect(textOf(element.querySelector('.found'))).toMatch(/2\.00/);
});

test('the sizes in stock stand beside it, each with what it gives', () => {
  const { element } = open('axle so that engine is 3200 rpm near [3.08, 3.23, 3.55]');
  const stocked = [...element.querySelectorAll('.stocked li')].map(textOf);
  expect(stocked).toHaveLength(3);
  expect(stocked.join()).toMatch(/3\.23.* gives 3230 rpm/);
});

test('the answer follows a change', async () => {
  const { element, desk, given } = open('axle so that engine is 2000 rpm');
  desk.enter(given('speed'), { text: '500' });
  await expect.poll(() => textOf(element.querySelector('.found'))).toMatch(/4\.00/);
});

test('a target out of reach is told with what comes nearest', () => {
  const { element } = open('axle so that engine is 9000 rpm');
  expect(textOf(element.querySelector('.found'))).toMatch(/5\.00/);
});

test('a question that cannot be asked says why', () => {
  const { element } = open('axle so that engine is 3 in');
  expect(textOf(element)).toMatch(/There is no answer: /);
});
