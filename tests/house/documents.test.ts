import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { findUnknownCommands, listCommands } from '../support/commands.ts';
import { ROOT } from '../support/source-tree.ts';

const PACKAGE = JSON.parse(read('package.json'));
const ABOUT = {
  scripts: PACKAGE.scripts as Record<string, string>,
  programs: new Set([...Object.keys(PACKAGE.bin), ...readdirSync(join(ROOT, 'node_modules/.bin'))]),
};

test.each(['README.md', 'DEVELOPERS.md'])('the commands in %s exist', (file) => {
  const commands = listCommands(read(file));
  expect(commands).not.toEqual([]);
  expect(findUnknownCommands(commands, ABOUT)).toEqual([]);
});

test.each(['README.md', 'DEVELOPERS.md'])('the files that %s links to exist', (file) => {
  const links = [...read(file).matchAll(/\]\((?!\w+:|#)([^)#]+)[^)]*\)/g)].map((m) => m[1]!);
  expect(links.filter((link) => !existsSync(join(ROOT, link)))).toEqual([]);
});

test('the check reads commands out of blocks, comments and all', () => {
  const text =
    'Say:\n\n```sh\nnpm ci && npm start   # builds\n$ npx layshaft --help\n```\n`npm x`\n';
  expect(listCommands(text)).toEqual(['npm ci', 'npm start', 'npx layshaft --help']);
});

test('the check finds a script and a program that are not there', () => {
  const about = { scripts: { start: '' }, programs: new Set(['layshaft']) };
  const commands = ['npm start', 'npm run star', 'npx layshat solve', 'git clone x', 'npm ci'];
  expect(findUnknownCommands(commands, about)).toEqual([
    'no command: npm run star',
    'no command: npx layshat solve',
  ]);
});

function read(file: string): string {
  return readFileSync(join(ROOT, file), 'utf8');
}
