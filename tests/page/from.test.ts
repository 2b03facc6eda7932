import { expect, test } from 'vitest';
import { createFrom } from '../../src/page/from.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const OPEN = `
\`\`\`from 20-sheet
gap as target "Gap wanted"
\`\`\`
`;
const ORIGIN = `# Bearing

\`\`\`given
gap = 0.150 in "Gap"
\`\`\`
`;

function show() {
  const test = createTestDesk(OPEN, ORIGIN);
  const element = test.show(createFrom(test.desk, test.sheet, test.block('from')));
  return { ...test, element, gap: test.desk.book.find('20-sheet', 'gap') as never };
}

test('a value that is carried in says from where, with a link', () => {
  const { element } = show();
  expect(textOf(element.querySelector('.given-row'))).toMatch(
    /^Gap wantedcarried in from 20 Bearing0\.15/,
  );
  expect(element.querySelector('a')?.getAttribute('href')).toBe('#/20-sheet/gap');
});

test('a change on its own sheet arrives', async () => {
  const { desk, element, gap } = show();
  desk.enter(gap, { text: '0.2' });
  await desk.settled();
  expect(textOf(element.querySelector('strong'))).toBe('0.2 in');
});

test('what is not there yet is waited for', async () => {
  const { desk, element, gap } = show();
  desk.enter(gap, { text: 'wide' });
  await desk.settled();
  expect(textOf(element.querySelector('.waits'))).toBe('waits for Gap, which has no value');
});
