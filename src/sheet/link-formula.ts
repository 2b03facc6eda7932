import { checkExpression } from '../language/check.ts';
import type { Scope } from '../language/checker.ts';
import { compileExpression } from '../language/compile.ts';
import type { Functions } from '../language/functions/builtins.ts';
import { fail, type Problem } from '../language/problem.ts';
import type { Expression } from '../language/tree.ts';
import { namesIn } from '../language/walk.ts';
import type { Cell, Formula } from './cell.ts';
import type { Drafts } from './drafts.ts';
import { placeProblem } from './places.ts';
import type { Sheet } from './sheet.ts';
import { whyBroken } from './waiting.ts';

/** What the linking of one formula draws on. */
export interface LinkContext {
  readonly drafts: Drafts;
  /** Cells linked so far; all that the formula reads are among them. */
  readonly cells: readonly Cell[];
  readonly functions: Functions;
}

/** Checks and compiles a formula of a sheet; a first problem stands for the cells that wait on it. */
export function linkFormula(
  tree: Expression,
  sheet: Sheet,
  cell: string,
  context: LinkContext,
): { readonly formula: Formula } | { readonly problems: readonly Problem[] } {
  const { cells, functions } = context;
  const own = context.drafts.names.get(sheet.name)!;
  const scope: Scope = {
    functions,
    names: () => [...own.keys()],
    lookUp(name) {
      const index = own.get(name);
      return index === undefined ? undefined : { kind: cells[index]?.kind };
    },
  };
  const { kind, problems, kinds } = checkExpression(tree, scope, sheet.source);
  if (problems.length > 0) {
    return { problems: problems.map((problem) => placeProblem(problem, sheet.places, cell)) };
  }
  const broken = namesIn(tree).find(
    (name) => own.has(name) && cells[own.get(name)!]?.kind === undefined,
  );
  if (kind === undefined || broken !== undefined) {
    return { problems: [waitFor(broken!, tree, sheet, cell, context)] };
  }
  const code = compileExpression(tree, { functions, kinds, slotOf: (name) => own.get(name)! });
  return { formula: { tree, kind, kinds, code } };
}

/** The formula is sound, but a cell that it reads is not; what it would give may be known all the same. */
function waitFor(
  name: string,
  tree: Expression,
  sheet: Sheet,
  cell: string,
  context: LinkContext,
): Problem {
  const index = context.drafts.names.get(sheet.name)!.get(name)!;
  const problem = {
    ...fail('waiting', tree, { name, why: whyBroken(context.cells, index) }),
    waitsFor: name,
  };
  return placeProblem(problem, sheet.places, cell);
}
