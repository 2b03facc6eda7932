import { expect, test } from 'vitest';
import { createWork } from '../../src/page/work.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `
\`\`\`given
width = 3 in "Width"
sizes = [1, 2] in "Sizes"
\`\`\`

\`\`\`work
twice = 2 * width "Twice the width" as in to 0.1
  positive "Wide." negative "Less than nothing." zero "Nothing." source "derived"
halves = sizes / 2 "Halves" as in to 0.1
share = 1 / width "Share" as 1/in
fixed = 2 * 3 "Fixed"
\`\`\`
`;

function show() {
  const test = createTestDesk(SHEET);
  const element = test.show(createWork(test.desk, test.sheet, test.block('work')));
  return { ...test, element, line: (name: string) => element.querySelector(`#${name}`)! };
}

test('a result stands with its name, its formula, the numbers in it and the answer', () => {
  const { line } = show();
  expect(textOf(line('twice').querySelector('.work-name'))).toBe('Twice the width');
  const formulas = [...line('twice').querySelectorAll('math')].map(textOf);
  expect(formulas).toEqual(['twice=2×width', '=2×3 in']);
  expect(textOf(line('twice').querySelector('strong'))).toBe('6.0 in');
});

test('the sign of a result tells what to do', async () => {
  const { desk, given, line } = show();
  expect(textOf(line('twice').querySelector('.sign-words'))).toBe('Wide.');
  desk.enter(given('width'), { text: '-1' });
  await desk.settled();
  expect(textOf(line('twice').querySelector('.sign-words'))).toBe('Less than nothing.');
});

test('the source stands beside the result', () => {
  const { element } = show();
  expect(textOf(element.querySelector('.margin'))).toBe('Where it comes fromderived');
});

test('a list is a small table', () => {
  const { line } = show();
  expect([...line('halves').querySelectorAll('dt')].map(textOf)).toEqual(['1', '2']);
  expect([...line('halves').querySelectorAll('dd')].map(textOf)).toEqual(['0.5 in', '1.0 in']);
});

test('a formula without names has no second line', () => {
  const { line } = show();
  expect(line('fixed').querySelectorAll('math')).toHaveLength(1);
});

test('what cannot be worked says why, and comes back when it can', async () => {
  const { desk, given, line } = show();
  desk.enter(given('width'), { text: '0' });
  await desk.settled();
  expect(textOf(line('share').querySelector('.failed'))).toMatch(/^Not worked: .*width/);
  desk.enter(given('width'), { text: '4' });
  await desk.settled();
  expect(textOf(line('share').querySelector('strong'))).toBe('0.25 1/in');
});

test('what waits has a link to what it waits for', async () => {
  const { desk, given, line } = show();
  desk.enter(given('width'), { text: '' });
  await desk.settled();
  expect(textOf(line('twice').querySelector('.waits'))).toBe('waits for Width, which is blank');
  expect(line('twice').querySelector('a')?.getAttribute('href')).toBe('#/10-sheet/width');
  expect(line('twice').querySelectorAll('math')).toHaveLength(1);
});
