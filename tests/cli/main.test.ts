import { expect, test } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { SHEETS } from './made-sheets.ts';
import { makeTerminal } from './made-terminal.ts';

test.each([
  [[], 0, /^layshaft: works the sheets/],
  [['--help'], 0, /^layshaft: works the sheets/],
  [['solve', '--help'], 0, /^layshaft solve/],
  [['solve', '10-shaft'], 0, /^Shaft\n/],
  [['solve', 'broken'], 1, /Problems/],
  [['check', '10-shaft'], 0, /no problem/],
  [['check', 'broken'], 1, /1 problem\n$/],
  [['chart', '10-shaft', 'out against ratio', '--csv', '-'], 0, /^Ratio,/],
])('%j exits with %d', async (typed, code, out) => {
  const terminal = makeTerminal(SHEETS);
  expect(await run(typed, terminal)).toBe(code);
  expect(terminal.out()).toMatch(out);
  expect(terminal.errors()).toBe('');
});

test.each([
  [['slove']],
  [['solve']],
  [['solve', 'none']],
  [['chart', '10-shaft', 'x', '--svg', '-']],
])('%j is wrong use', async (typed) => {
  const terminal = makeTerminal(SHEETS);
  expect(await run(typed, terminal)).toBe(2);
  expect(terminal.out()).toBe('');
  expect(terminal.errors()).toMatch(/^layshaft: .+\n(Usage: .+\n)?See npx layshaft .+\n$/);
});
