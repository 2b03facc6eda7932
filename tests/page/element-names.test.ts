import { expect, test } from 'vitest';
import { namesFor } from '../../src/page/element-names.ts';
import { createTestDesk } from './test-desk.ts';

const SHEET = `
\`\`\`given
x = 1
ratios = [3, 2, 1]
\`\`\`

\`\`\`work
gear = ordinals(ratios)
speeds = ratios * x
steps = without_first(ratios)
\`\`\`
`;
const OTHER = '\n```work\nplaces = ordinals(speeds)\n```\n';
const CHART = '\n```chart "Speeds"\nspeeds over x from 0 to 5 a line for each places\n```\n';

function names(source: string, name: string) {
  const { desk, sheet } = createTestDesk(source);
  return namesFor(desk, desk.book.find(sheet.name, name)!);
}

test('the one list of words that is as long names the elements', () => {
  expect(names(SHEET, 'speeds')).toEqual(['1st', '2nd', '3rd']);
});

test('a list of another length has no names', () => {
  expect(names(SHEET, 'steps')).toBeUndefined();
});

test('two lists of words that fit name nothing, unless a chart says which', () => {
  expect(names(SHEET + OTHER, 'speeds')).toBeUndefined();
  expect(names(SHEET + OTHER + CHART, 'speeds')).toEqual(['1st', '2nd', '3rd']);
});

test('a single figure has no elements to name', () => {
  expect(names(SHEET, 'x')).toBeUndefined();
});
