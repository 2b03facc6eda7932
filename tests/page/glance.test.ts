import { expect, test } from 'vitest';
import { createGlance } from '../../src/page/glance.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `# A
\`\`\`given
gap = 3 in "Gap"
late = blank in
\`\`\`
\`\`\`work
twist = gap / 1 in "Turn the collar" positive "Out." negative "In."
\`\`\`
\`\`\`check
gap at least 1 in "Wide enough"
gap at most 4 in "Close enough"
late at most 4 in "Told later"
\`\`\`
`;

function open(source: string) {
  const made = createTestDesk(source);
  const view = createGlance(made.desk, made.sheet);
  return { ...made, view, element: view && made.show(view) };
}

test('each check stands with its value and its verdict in words', () => {
  const { element } = open(SHEET);
  expect([...element!.querySelectorAll('li')].map(textOf)).toEqual([
    'Wide enough 3 in inside by 2 in',
    'Close enough 3 in inside by 1 in',
    'Told later – cannot be told yet',
    'Turn the collar 3 Out.',
  ]);
});

test('the head counts the checks and leads to the first reading', () => {
  const { element } = open(SHEET);
  expect(textOf(element!.querySelector('.glance-tally'))).toBe(
    '2 of 3 checks pass, 1 cannot be told yet',
  );
  expect(element!.querySelector('.to-readings')?.getAttribute('href')).toBe('#/10-sheet/gap');
});

test('each item leads to its place', () => {
  const { element } = open(SHEET);
  const hrefs = [...element!.querySelectorAll('li a')].map((link) => link.getAttribute('href'));
  expect(hrefs).toEqual([
    '#/10-sheet/check-10',
    '#/10-sheet/check-11',
    '#/10-sheet/check-12',
    '#/10-sheet/twist',
  ]);
});

test('a change is seen at once', async () => {
  const { desk, element, given } = open(SHEET);
  desk.enter(given('gap'), { text: '5' });
  await desk.settled();
  await Promise.resolve();
  expect(textOf(element!.querySelector('.fails'))).toBe('Close enough 5 in too much by 1 in');
  expect(textOf(element!.querySelector('.glance-tally'))).toMatch(/one fails/);
});

const MANY = `# A
\`\`\`given
gap = 3 in
\`\`\`
\`\`\`check
${Array.from({ length: 9 }, (_, i) => `gap at least ${i === 8 ? 4 : 1} in "No. ${i + 1}"`).join('\n')}
\`\`\`
`;

test('of many checks the one that fails is among those shown', () => {
  const { element } = open(MANY);
  const labels = [...element!.querySelectorAll('.glance-label')].map(textOf);
  expect(labels).toEqual(['No. 1', 'No. 2', 'No. 3', 'No. 4', 'No. 5', 'No. 9']);
});

test('where all pass, the head says so', () => {
  const one = '# A\n```given\ngap = 3 in\n```\n```check\ngap at least 1 in\n```\n';
  expect(textOf(open(one).element!.querySelector('.glance-tally'))).toBe('The check passes');
  const two = `${one}\n\`\`\`check\ngap at most 9 in\n\`\`\`\n`;
  expect(textOf(open(two).element!.querySelector('.glance-tally'))).toBe('All 2 checks pass');
});

test('a sheet that works nothing has no such strip', () => {
  expect(open('# A\n\nWords.\n').view).toBeUndefined();
});
