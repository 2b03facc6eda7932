import { spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ROOT } from '../support/source-tree.ts';

/** As the link to the program that npm makes does it, from a folder with other settings. */
function layshaft(...typed: readonly string[]) {
  const program = join(ROOT, 'src/cli/layshaft.js');
  return spawnSync(process.execPath, [program, ...typed], { cwd: tmpdir(), encoding: 'utf8' });
}

test('the program runs from any folder and finds the sheets that it comes with', () => {
  const { status, stdout, stderr } = layshaft('solve', '70-release-bearing', '--json');
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(JSON.parse(stdout)).toMatchObject({
    sheet: '70-release-bearing',
    results: { gap: { value: expect.closeTo(0.165, 9), unit: 'in', text: '0.165 in' } },
    problems: [],
  });
});

test('wrong use exits with 2 and leaves standard output alone', () => {
  const { status, stdout, stderr } = layshaft('slove');
  expect(status).toBe(2);
  expect(stdout).toBe('');
  expect(stderr).toContain('did you mean solve?');
});
