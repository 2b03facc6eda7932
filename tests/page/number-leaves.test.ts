import { expect, test } from 'vitest';
import { parseExpression } from '../../src/language/parse.ts';
import { mathElement, printMath } from '../../src/language/print-math.ts';
import type { Expression } from '../../src/language/tree.ts';
import { createMath } from '../../src/page/math.ts';
import { createNumberLeaves } from '../../src/page/number-leaves.ts';
import { createTestDesk, type TestDesk, textOf } from './test-desk.ts';

const SHEET = `
\`\`\`table springs "Springs"
spring,rate (N/mm)
Light,20
\`\`\`

\`\`\`given
width = 3.212 in "Width"
pitch = 1.5 mm/rev
height = 11.63 in to 0.05
open = blank in
sizes = [1, 2] in
many = [1, 2, 3, 4, 5, 6, 7, 8, 9]
spring = pick "Light" from springs
\`\`\`

\`\`\`work
twice = 2 * width as in to 0.01
\`\`\`
`;

function write({ desk, sheet }: TestDesk, source: string): string {
  const tree = parseExpression(source, 'sheet') as Expression;
  const math = mathElement('math', printMath(tree, createNumberLeaves(desk, sheet.name)));
  return textOf(createMath(math));
}

test.each([
  ['width', '3.212 in'],
  ['twice', '6.42 in'],
  ['height', '11.63 in'],
  ['sizes', '[1,2] in'],
  ['many', 'many'],
  ['open', 'open'],
  ['spring.rate', '114.2 lbf/in'],
  ['spring', 'spring'],
  ['2 in', '2 in'],
])('%s is written with its number as %s', (source, written) => {
  expect(write(createTestDesk(SHEET), source)).toBe(written);
});

test('what was entered in a metric unit stays metric, on whatever page', () => {
  const opened = createTestDesk(SHEET);
  expect(write(opened, 'pitch')).toBe('1.5 mm/rev');
  opened.desk.chooseSystem('metric');
  expect(write(opened, 'pitch')).toBe('1.5 mm/rev');
  expect(write(opened, 'width')).toBe('81.58 mm');
});
