import { expect, test } from 'vitest';
import { reportChange } from '../../src/page/change-report.ts';
import { createTestDesk } from './test-desk.ts';

const SHEET = `
\`\`\`given
x = 1 in "X"
\`\`\`

\`\`\`work
a = 2 * x "A" as in
b = 3 * x "B" as in
c = 4 * x "C" as in
d = 1 / x "D" as 1/in
\`\`\`

\`\`\`check
a at most 5 in "A small enough"
\`\`\`
`;

function report(text: string, ...names: string[]): string {
  const { desk, sheet, given } = createTestDesk(SHEET);
  desk.enter(given('x'), { text });
  const cells = names.map((name) => desk.book.find(sheet.name, name)!.index);
  return reportChange(desk, sheet, new Set(cells)).replaceAll('\u00a0', ' ');
}

test('results and checks that changed are told', () => {
  expect(report('1', 'x', 'a')).toBe('A: 2 in. Check, A small enough: passes.');
});

test('after three results the rest are counted', () => {
  expect(report('1', 'a', 'b', 'c', 'd')).toMatch(/^A: .*B: .*C: .*1 more result\./);
});

test('an entry that cannot be read is told first', () => {
  expect(report('wide', 'x', 'a')).toMatch(/^Error, X: .*wide.* A: 2.in\./);
});

test('where nothing changed nothing is said', () => {
  expect(report('1')).toBe('');
});
