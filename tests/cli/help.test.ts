import { expect, test } from 'vitest';
import { correct, help } from '../../src/cli/help.ts';
import { ALLOWED } from '../../src/cli/options.ts';
import { makeTerminal } from './made-terminal.ts';

test('the overview names every command, the exit codes and something to begin with', () => {
  const terminal = makeTerminal();
  expect(help({ command: 'help' }, terminal)).toBe(0);
  for (const command of Object.keys(ALLOWED))
    expect(terminal.out()).toContain(`layshaft ${command}`);
  expect(terminal.out()).toMatch(/Exit code: 0 .* 1 .* 2 /);
  expect(terminal.out()).toContain('npx layshaft solve 20-gearing\n');
});

test.each(Object.entries(ALLOWED))('help on %s tells each of its options', (about, options) => {
  const terminal = makeTerminal();
  help({ command: 'help', about }, terminal);
  expect(terminal.out()).toMatch(new RegExp(`^layshaft ${about}`));
  for (const option of options) expect(terminal.out()).toContain(`--${option}`);
});

test('no line of help is wider than a terminal of 100 characters', () => {
  const terminal = makeTerminal();
  help({ command: 'help' }, terminal);
  for (const about of Object.keys(ALLOWED)) help({ command: 'help', about }, terminal);
  const widest = Math.max(
    ...terminal
      .out()
      .split('\n')
      .map((line) => line.length),
  );
  expect(widest).toBeLessThanOrEqual(100);
});

test('wrong use goes to standard error with the usage, and exits with 2', () => {
  const terminal = makeTerminal();
  const misuse = { command: 'misuse', sentence: 'solve needs a sheet', about: 'solve' } as const;
  expect(correct(misuse, terminal)).toBe(2);
  expect(terminal.out()).toBe('');
  expect(terminal.errors()).toBe(
    'layshaft: solve needs a sheet\n' +
      'Usage: npx layshaft solve SHEET [--job FILE] [--given NAME=ENTRY]... [--json]\n' +
      'See npx layshaft help solve\n',
  );
});

test('wrong use of nothing in particular points to the overview', () => {
  const terminal = makeTerminal();
  correct({ command: 'misuse', sentence: 'there is no command "x"' }, terminal);
  expect(terminal.errors()).toBe('layshaft: there is no command "x"\nSee npx layshaft --help\n');
});
