import { expect, test, vi } from 'vitest';
import { createChecks } from '../../src/page/check.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `
\`\`\`given
gap = 0.165 in "Gap" to 0.001
steps = [1.2, 1.9] "Steps"
\`\`\`

\`\`\`check
gap between 0.125 in and 0.200 in "Bearing gap"
  below "It slips." above "It runs out of stroke." source "common practice, no source"
steps at most 1.75 "Steps between gears"
\`\`\`
`;

function show() {
  const test = createTestDesk(SHEET);
  const element = test.show(createChecks(test.desk, test.block('check')));
  return { ...test, element, verdicts: () => [...element.querySelectorAll('.verdict')] };
}

test('a value inside its window passes in words, with the distance to the limit', () => {
  const { verdicts } = show();
  expect(textOf(verdicts()[0])).toBe('Inside the window. 0.035 in to the nearer limit.');
  expect(verdicts()[0]?.className).toBe('verdict passes');
});

test('a list fails where one element does, and names it', () => {
  const { verdicts } = show();
  expect(textOf(verdicts()[1])).toMatch(/^no\. 2: 1\.9 is 0\.15 more than the most allowed/);
});

test('a value outside says what it means to be there', async () => {
  const { desk, given, element, verdicts } = show();
  desk.enter(given('gap'), { text: '0.100' });
  await desk.settled();
  expect(textOf(verdicts()[0])).toBe('0.100 in is 0.025 in less than the least allowed, 0.125 in.');
  expect(textOf(element.querySelector('.meaning'))).toBe('It slips.');
});

test('without a value there is no verdict, and the wanting one is named', async () => {
  const { desk, given, element, verdicts } = show();
  desk.enter(given('gap'), { text: '' });
  await desk.settled();
  expect(textOf(verdicts()[0])).toBe('Cannot be told yet.');
  expect(textOf(element.querySelector('.waits'))).toBe('left blank');
});

test('the gauge is drawn and told', async () => {
  const { element } = show();
  await vi.waitFor(() => expect(element.querySelectorAll('svg desc')).toHaveLength(2));
  expect(textOf(element.querySelector('svg desc'))).toContain('window from 0.125 in to 0.200 in');
});
