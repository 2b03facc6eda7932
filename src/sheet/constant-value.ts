import { checkExpression } from '../language/check.ts';
import type { Scope } from '../language/checker.ts';
import { compileExpression } from '../language/compile.ts';
import { isThere } from '../language/compile-call.ts';
import { explain } from '../language/explain.ts';
import type { Functions } from '../language/functions/builtins.ts';
import type { Kind, Value } from '../language/kind.ts';
import { createMemory } from '../language/memory.ts';
import type { Problem } from '../language/problem.ts';
import type { Expression } from '../language/tree.ts';

export interface ConstantValue {
  readonly value: Value;
  readonly kind: Kind;
}

/** Works an expression that names no cell: a bound of a range, a cell of a table. */
export function constantValue(
  tree: Expression,
  functions: Functions,
  source: string,
): ConstantValue | Problem {
  const scope: Scope = { functions, lookUp: () => undefined, names: () => [] };
  const { kind, problems, kinds } = checkExpression(tree, scope, source);
  const [problem] = problems;
  if (problem !== undefined) return problem;
  const context = { functions, kinds, slotOf: () => 0 };
  const memory = createMemory(0);
  const value = compileExpression(tree, context).run(memory) as Value;
  if (isThere(value)) return { value, kind: kind! };
  return explain(tree, { ...context, memory, source, whyNot: () => '' });
}
