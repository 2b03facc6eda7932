import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { lexer as whole } from 'marked';
import { describe, expect, test } from 'vitest';
import { keepExport } from '../../build/lexer-only.ts';
import { ROOT } from '../support/source-tree.ts';

const LIBRARY = readFileSync(join(ROOT, 'node_modules/marked/lib/marked.esm.js'), 'utf8');

describe('a module with one of its exports', () => {
  test('keeps what this one needs, step by step, and nothing else', () => {
    const code =
      'var a = () => b(), c = 1; function b() { return d.e; } class d { static e = 2 } export { a as first, c };';
    expect(keepExport(code, 'first')).toBe(
      'var a = () => b();\nfunction b() { return d.e; }\nclass d { static e = 2 }\nexport { a as first };\n',
    );
  });

  test('keeps what is done to something that stays, and loses what is done to the rest', () => {
    const code = 'function a() {} function b() {} a.x = 1; b.x = a; export { a, b };';
    expect(keepExport(code, 'a')).toBe('function a() {}\na.x = 1;\nexport { a as a };\n');
  });

  test('says so when the export is gone', () => {
    expect(() => keepExport('var a = 1; export { a };', 'lexer')).toThrow(/no lexer any more/);
  });
});

describe('the library that reads Markdown', () => {
  const short = keepExport(LIBRARY, 'lexer');

  test('is a fifth shorter without what writes HTML', () => {
    expect(short.length).toBeLessThan(0.8 * LIBRARY.length);
    expect(short).not.toContain('<blockquote>');
  });

  test.each([
    ['the guide', 'notebooks/00-how-a-sheet-works.md'],
    ['a sheet', 'notebooks/70-release-bearing.md'],
    ['a page of another kind', 'DEVELOPERS.md'],
  ])('reads %s as the whole one does', async (_, path) => {
    const { lexer } = await import(`data:text/javascript,${encodeURIComponent(short)}`);
    const text = readFileSync(join(ROOT, path), 'utf8');
    expect(JSON.stringify(lexer(text))).toBe(JSON.stringify(whole(text)));
  });
});
