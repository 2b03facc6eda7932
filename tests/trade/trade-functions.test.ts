import { expect, test } from 'vitest';
import { BUILTINS } from '../../src/language/functions/builtins.ts';
import { TRADE } from '../../src/trade/trade-functions.ts';
import { readTree } from '../support/source-tree.ts';

test('no two functions share a name, of language or trade', () => {
  const names = [...BUILTINS, ...TRADE].map(({ name }) => name);
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
});

test.each(TRADE.map((declaration) => [declaration.name, declaration] as const))(
  '%s says what it gives, what it takes, where it comes from and how far it goes',
  (_, { doc, parameters, source, validity }) => {
    expect(doc).toMatch(/^[A-Z].*\.$/s);
    expect(parameters.every((parameter) => parameter.doc !== '')).toBe(true);
    expect(source).toMatch(/derived|published|memory|common practice/);
    expect(validity ?? '').not.toBe('');
  },
);

test('every declaration in the folder is listed', () => {
  const declared = [...readTree('src/trade', ['.ts']).values()].flatMap((text) =>
    [...text.matchAll(/^\s+name: '([a-z0-9_]+)',\n\s+doc: /gm)].map((match) => match[1]!),
  );
  const listed = new Set(TRADE.map(({ name }) => name));
  const functions = declared.filter((name) => /_/.test(name));
  expect(functions.length).toBeGreaterThan(20);
  expect(functions.filter((name) => !listed.has(name))).toEqual([]);
});
