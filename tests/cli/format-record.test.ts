import { expect, test } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { makeTerminal } from './made-terminal.ts';

const LONG = 'A label that is much longer than any label of a result should ever be';
const WORDS =
  'Wind the collar toward the clutch until the gap is what it should be, and no further than that.';
const SHEET = `# Long

\`\`\`work
a = 1 "Short"
b = 2 "${LONG}"
c = 3 "Words" positive "${WORDS}"
\`\`\`
`;

async function solve(text: string): Promise<readonly string[]> {
  const terminal = makeTerminal({ 'x.md': text });
  await run(['solve', 'x.md'], terminal);
  return terminal.out().split('\n');
}

test('a very long label has a line to itself and pushes nothing out', async () => {
  const lines = await solve(SHEET);
  expect(lines).toContain('  Short  1');
  expect(lines[lines.indexOf(`  ${LONG}`) + 1]).toBe('         2');
});

test('long texts are broken at words, under their column, within 100 characters', async () => {
  const text = (await solve(SHEET)).slice(0, -1);
  const start = text.findIndex((line) => line.startsWith('  Words'));
  const told = text.slice(start).join(' ').replaceAll(/\s+/g, ' ');
  expect(told).toBe(` Words 3. ${WORDS}`);
  expect(text[start + 1]).toMatch(/^ {9}\S/);
  expect(Math.max(...text.map((line) => line.length))).toBeLessThanOrEqual(100);
});

test('a sheet with nothing to work has a title only', async () => {
  expect(await solve('# Words\n\nNothing here.\n')).toEqual(['Words', '']);
});

test('a check that cannot be told says so once', async () => {
  const given = '```given\na = blank in\n```\n';
  const check = '```check\na at least 1 in "Depth"\n```\n';
  expect(await solve(`# Depth\n\n${given}\n${check}`)).toContain(
    '  Depth  Cannot be told yet. a is blank',
  );
});
