import { expect, test } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { SHEETS } from './made-sheets.ts';
import { makeTerminal } from './made-terminal.ts';

test('sound sheets are counted', async () => {
  const terminal = makeTerminal(SHEETS);
  expect(await run(['check', '10-shaft', '30-car'], terminal)).toBe(0);
  expect(terminal.out()).toBe('2 sheets read, no problem\n');
});

test('every problem stands with its place', async () => {
  const terminal = makeTerminal(SHEETS);
  expect(await run(['check', 'broken', 'orphan'], terminal)).toBe(1);
  expect(terminal.out()).toMatch(/^notebooks\/broken\.md:8:\d+: cannot add /);
  expect(terminal.out()).toMatch(/\nnotebooks\/orphan\.md:3:\d+: .*no-such/);
  expect(terminal.out()).toMatch(/\n2 sheets read, 2 problems\n$/);
});

test('a problem on a sheet that two lean on is told once', async () => {
  const files = {
    'a.md': '# A\n\n```from c\nx\n```\n',
    'b.md': '# B\n\n```from c\nx\n```\n',
    'c.md': '# C\n\n```work\nx = 1\ny = x + 2 in\n```\n',
  };
  const terminal = makeTerminal(files);
  expect(await run(['check', 'a', 'b', '--json'], terminal)).toBe(1);
  expect(JSON.parse(terminal.out())).toMatchObject([{ code: 'dimension-mismatch', cell: 'y' }]);
});

test('sound sheets give an empty list as JSON', async () => {
  const terminal = makeTerminal(SHEETS);
  expect(await run(['check', '10-shaft', '--json'], terminal)).toBe(0);
  expect(JSON.parse(terminal.out())).toEqual([]);
});

test('one sheet that is not there refuses them all', async () => {
  const terminal = makeTerminal(SHEETS);
  expect(await run(['check', 'broken', 'none'], terminal)).toBe(2);
  expect(terminal.out()).toBe('');
  expect(terminal.errors()).toContain('there is no sheet "none"');
});

test('an empty file is a sheet without problems', async () => {
  const terminal = makeTerminal({ 'empty.md': '' });
  expect(await run(['check', 'empty.md'], terminal)).toBe(0);
});
