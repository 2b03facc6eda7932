import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { createTerminal, refuse } from '../../src/cli/terminal.ts';
import { makeTerminal } from './made-terminal.ts';

const FOLDER = mkdtempSync(join(tmpdir(), 'layshaft-terminal-'));
afterAll(() => rmSync(FOLDER, { recursive: true }));

test('what is saved is read back and listed', () => {
  const terminal = createTerminal();
  const path = join(FOLDER, 'a.txt');
  terminal.saveText(path, '3⅛ in');
  expect(terminal.readText(path)).toBe('3⅛ in');
  expect(terminal.listFolder(FOLDER)).toEqual(['a.txt']);
});

test('a missing file, a folder and a missing folder are simply not there', () => {
  const terminal = createTerminal();
  expect(terminal.readText(join(FOLDER, 'none.txt'))).toBeUndefined();
  expect(terminal.readText(FOLDER)).toBeUndefined();
  expect(terminal.listFolder(join(FOLDER, 'none'))).toEqual([]);
});

test('a file that cannot be written says so', () => {
  expect(() => createTerminal().saveText(join(FOLDER, 'none', 'a'), '')).toThrow(/ENOENT/);
});

test('a refusal goes to standard error and gives exit code 2', () => {
  const terminal = makeTerminal();
  expect(refuse(terminal, 'no such thing', 'See help')).toBe(2);
  expect(terminal.errors()).toBe('layshaft: no such thing\nSee help\n');
});
