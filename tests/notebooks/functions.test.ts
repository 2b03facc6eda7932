import { expect, test } from 'vitest';
import { BUILTINS } from '../../src/language/functions/builtins.ts';
import type { FunctionDeclaration } from '../../src/language/functions/declaration.ts';
import { TRADE } from '../../src/trade/trade-functions.ts';
import { readTable } from '../support/markdown-table.ts';
import { expectSameFormulas } from '../support/same-value.ts';
import { readTree } from '../support/source-tree.ts';

const GUIDE = readTree('notebooks', ['how-a-sheet-works.md']).values().next().value!;

test('the guide lists every function of the language as it is declared', () => {
  const rows = readTable(GUIDE, '| function | gives | for example | is |');
  expect(rows).toEqual(BUILTINS.map((each) => [signatureOf(each), each.doc, ...each.example]));
});

test('the guide lists every formula of the trade in a line of its own', () => {
  const rows = readTable(GUIDE, '| formula of the trade | gives |');
  expect(rows).toEqual(TRADE.map((each) => [signatureOf(each), each.doc]));
});

test.each([...BUILTINS, ...TRADE].map(({ example }) => example))('%s is %s', (written, same) => {
  expectSameFormulas(written, same);
});

function signatureOf({ name, parameters, several = false }: FunctionDeclaration): string {
  const names = [...parameters.map((parameter) => parameter.name), ...(several ? ['…'] : [])];
  return `${name}(${names.join(', ')})`;
}
