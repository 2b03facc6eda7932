import { expect, test } from 'vitest';
import { createPractice } from '../../src/page/practice.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `# A
\`\`\`given
finger = 3.200 in "Finger reading" from 3.1 in to 3.3 in to 0.001
bearing = 3.000 in "Bearing reading"
\`\`\`
\`\`\`work
gap = finger - bearing "Gap" as in to 0.001
\`\`\`
\`\`\`practice "The gap"
ask gap within 0.001 in "How wide is the gap?"
mistake finger + bearing "Added instead of subtracted."
\`\`\`
`;

function open() {
  const made = createTestDesk(SHEET);
  const element = made.show(createPractice(made.desk, made.sheet, made.block('practice')));
  const [answer, seed] = [...element.querySelectorAll('input')] as HTMLInputElement[];
  const told = () => textOf(element.querySelector('.told'));
  const finger = () => Number.parseFloat(textOf(element.querySelector('dd')));
  return {
    ...made,
    element,
    seed: seed!,
    told,
    finger,
    answer(text: string) {
      answer!.value = text;
      element.querySelector<HTMLFormElement>('.practice-answer')!.requestSubmit();
    },
    press(name: string) {
      [...element.querySelectorAll('button')].find((one) => one.textContent === name)!.click();
    },
  };
}

test('fresh numbers are shown, and the answer is not in the page', () => {
  const { element, finger, told } = open();
  expect(textOf(element.querySelector('dt'))).toBe('Finger reading');
  expect(finger()).toBeGreaterThanOrEqual(3.1);
  expect(finger()).toBeLessThanOrEqual(3.3);
  expect(told()).toBe('');
  expect(textOf(element)).not.toContain((finger() - 3).toFixed(3));
});

test('the right answer is told as right, and kept with the job', () => {
  const { answer, finger, told, desk } = open();
  answer(`${(finger() - 3).toFixed(3)} in`);
  expect(told()).toMatch(/Right/);
  expect(JSON.stringify(desk.job())).toContain('"told":"right"');
});

test('a usual mistake is known by its answer', () => {
  const { answer, finger, told } = open();
  answer(`${(finger() + 3).toFixed(3)} in`);
  expect(told()).toContain('Added instead of subtracted.');
});

test('what cannot be read is no attempt', () => {
  const { answer, desk } = open();
  answer('about a tenth');
  expect(JSON.stringify(desk.job())).not.toContain('about a tenth');
});

test('a seed deals the same numbers again, and the next one others', () => {
  const { finger, seed, press } = open();
  const first = finger();
  press('Fresh numbers');
  expect(seed.value).toBe('2');
  expect(finger()).not.toBe(first);
  seed.value = '1';
  press('Deal these');
  expect(finger()).toBe(first);
});
