import { ARITHMETIC } from './arithmetic.ts';
import type { FunctionDeclaration } from './declaration.ts';
import { INTERPOLATE } from './interpolate.ts';
import { LISTS } from './lists.ts';
import { TRIGONOMETRY } from './trigonometry.ts';

/** The functions of the language itself; those of the trade are declared in their own room. */
export const BUILTINS: readonly FunctionDeclaration[] = [
  ...ARITHMETIC,
  ...TRIGONOMETRY,
  ...LISTS,
  INTERPOLATE,
];

/** Functions by name, as the checker and the compiler look them up. */
export type Functions = ReadonlyMap<string, FunctionDeclaration>;

export function createFunctions(declarations: readonly FunctionDeclaration[]): Functions {
  return new Map(declarations.map((declaration) => [declaration.name, declaration]));
}
