import { expect, test } from 'vitest';
import { findUntested } from '../support/mirror.ts';
import { readTree } from '../support/source-tree.ts';

const SOURCE = readTree('src', ['.ts']);
const TESTS = new Set(readTree('tests', ['.test.ts']).keys());

test('each file of src has its test file', () => {
  expect(findUntested(SOURCE, TESTS)).toEqual([]);
});

test('the check misses a test file that is not there', () => {
  const tree = new Map([['src/a/b.ts', 'export const b = 1;']]);
  expect(findUntested(tree, new Set())).toEqual(['src/a/b.ts has no tests/a/b.test.ts']);
  expect(findUntested(tree, new Set(['tests/a/b.test.ts']))).toEqual([]);
});

test('a file of types alone needs no test file', () => {
  const text = "import type { C } from './c.ts';\nexport interface B {}\nexport type D = C;";
  expect(findUntested(new Map([['src/a/b.ts', text]]), new Set())).toEqual([]);
});

test('a file with types and one function needs a test file', () => {
  const text = 'export interface B {}\nexport function b() {}';
  expect(findUntested(new Map([['src/a/b.ts', text]]), new Set())).toHaveLength(1);
});
