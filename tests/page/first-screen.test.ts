import { expect, test } from 'vitest';
import { createFirstScreen } from '../../src/page/first-screen.ts';

test('the first screen offers a new job, opening one, the others and a tour, and says what stays', () => {
  const pressed: string[] = [];
  const element = createFirstScreen({
    newJob: () => pressed.push('new'),
    showTour: () => pressed.push('tour'),
  });
  for (const button of element.querySelectorAll('button')) button.click();
  expect(pressed).toEqual(['new', 'tour']);
  const links = [...element.querySelectorAll('a')].map((link) => [
    link.textContent,
    link.getAttribute('href'),
  ]);
  expect(links).toEqual([
    ['Open a job', '#/jobs/open'],
    ['Your jobs', '#/jobs'],
  ]);
  expect(element.textContent).toContain('nothing is ever sent anywhere');
});
