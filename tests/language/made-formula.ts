import { type Checked, checkExpression } from '../../src/language/check.ts';
import type { Scope } from '../../src/language/checker.ts';
import { type CompileContext, compileExpression } from '../../src/language/compile.ts';
import { isThere } from '../../src/language/compile-call.ts';
import { explain } from '../../src/language/explain.ts';
import { BUILTINS, createFunctions } from '../../src/language/functions/builtins.ts';
import { createMemory, type Memory } from '../../src/language/memory.ts';
import { parseExpression } from '../../src/language/parse.ts';
import type { Problem } from '../../src/language/problem.ts';
import type { Expression } from '../../src/language/tree.ts';
import { storeValue } from '../../src/sheet/enter.ts';
import { type MadeValue, makeValue } from './made-value.ts';

/** Values by name, written as `makeValue` reads them. */
export type Names = Readonly<Record<string, string>>;

export const FUNCTIONS = createFunctions(BUILTINS);

/** A formula taken through the language: read, checked and, where sound, worked. */
export interface MadeFormula {
  readonly source: string;
  readonly tree: Expression;
  readonly checked: Checked;
  /** Undefined where there is no value. */
  readonly value: unknown;
  /** The first fault of the formula, or why it has no value. */
  readonly problem: Problem | undefined;
}

/** Reads, checks and works a formula over named values. Throws where it cannot be read at all. */
export function makeFormula(source: string, names: Names = {}): MadeFormula {
  const tree = readTree(source);
  return { source, tree, ...workTree(tree, source, makeNames(names)) };
}

/** The first problem of a formula, its reading included. */
export function problemOf(source: string, names: Names = {}): Problem | undefined {
  const tree = parseExpression(source, 'sheet');
  return 'code' in tree ? tree : workTree(tree, source, makeNames(names)).problem;
}

/** The tree of a formula that reads. */
export function readTree(source: string): Expression {
  const tree = parseExpression(source, 'sheet');
  if ('code' in tree) throw new Error(`${source}: ${tree.message}`);
  return tree;
}

export type Made = ReadonlyMap<string, MadeValue>;

export function makeNames(names: Names): Made {
  return new Map(Object.entries(names).map(([name, text]) => [name, makeValue(text)]));
}

/** Checks a tree and works it where it is sound. */
export function workTree(tree: Expression, source: string, names: Made) {
  const checked = checkExpression(tree, createScope(names), source);
  if (checked.problems.length > 0 || checked.kind === undefined) {
    return { checked, value: undefined, problem: checked.problems[0] };
  }
  const context = createContext(checked, names);
  const memory = createMemoryOf(names);
  const value = compileExpression(tree, context).run(memory);
  if (isThere(value)) return { checked, value, problem: undefined };
  const whyNot = (name: string) => (names.get(name)!.blank ? 'is blank' : 'has an error');
  return {
    checked,
    value: undefined,
    problem: explain(tree, { ...context, memory, source, whyNot }),
  };
}

export function createScope(names: Made): Scope {
  return {
    functions: FUNCTIONS,
    lookUp: (name) => names.get(name),
    names: () => [...names.keys()],
  };
}

export function createContext({ kinds }: Checked, names: Made): CompileContext {
  const order = [...names.keys()];
  return { functions: FUNCTIONS, kinds, slotOf: (name) => order.indexOf(name) };
}

export function createMemoryOf(names: Made): Memory {
  const memory = createMemory(names.size);
  for (const [i, { kind, value, blank }] of [...names.values()].entries()) {
    storeValue(memory, i, kind, value);
    memory.blanks[i] = blank ? 1 : 0;
  }
  return memory;
}
