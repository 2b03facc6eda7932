import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dropProse } from '../../build/late-prose.ts';
import { ROOT } from '../support/source-tree.ts';

describe('declarations without what is said of them', () => {
  test('keep their names, their work and their dimensions', () => {
    const code = `export const F = { name: 'f', doc: 'It "works".', work: { run: (x) => x }, example: ['f(1)', '1'] };`;
    expect(dropProse(code)).toBe(
      `export const F = { name: 'f', doc: '', work: { run: (x) => x }, example: ['', ''] };`,
    );
  });

  test('lose what is said of each parameter as well', () => {
    expect(dropProse(`const P = [{ name: 'a', doc: \`long \${1} text\` }];`)).toBe(
      `const P = [{ name: 'a', doc: '' }];`,
    );
  });

  test('leave alone what only looks like prose', () => {
    const code = `const doc = 'x'; const note = f({ title: 'doc: y' });`;
    expect(dropProse(code)).toBe(code);
  });

  test('are a third shorter in a file of the trade, and still TypeScript', () => {
    const whole = readFileSync(join(ROOT, 'src/trade/road-load.ts'), 'utf8');
    const short = dropProse(whole);
    expect(short.length).toBeLessThan(whole.length);
    expect(short).toContain('export const ROAD_LOAD');
  });
});
