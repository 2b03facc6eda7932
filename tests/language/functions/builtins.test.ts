import { expect, test } from 'vitest';
import { BUILTINS, createFunctions } from '../../../src/language/functions/builtins.ts';
import type { FunctionDeclaration } from '../../../src/language/functions/declaration.ts';
import { readTree } from '../../support/source-tree.ts';

test('every declaration that a file of the folder hands out is listed', async () => {
  const paths = [...readTree('src/language/functions', ['.ts']).keys()];
  const rooms: object[] = await Promise.all(
    paths.map((path) => import(/* @vite-ignore */ `../../../${path}`)),
  );
  const declared = rooms
    .flatMap((room) => Object.values(room).flat())
    .filter((each): each is FunctionDeclaration => typeof each === 'object' && 'work' in each);
  expect(declared.length).toBeGreaterThan(BUILTINS.length);
  expect(declared.filter((each) => !BUILTINS.includes(each))).toEqual([]);
});

test('functions are found by their names, and by nothing that objects have besides', () => {
  const functions = createFunctions(BUILTINS);
  expect(functions.size).toBe(BUILTINS.length);
  expect(functions.get('sum')).toBe(BUILTINS.find(({ name }) => name === 'sum'));
  expect(functions.get('constructor')).toBeUndefined();
});

test('no functions at all', () => {
  expect(createFunctions([]).size).toBe(0);
});
