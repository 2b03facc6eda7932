import type { Functions } from './functions/builtins.ts';
import type { Kind } from './kind.ts';
import type { Problem, Span } from './problem.ts';
import type { Details, ProblemCode } from './problem-codes.ts';
import type { Expression } from './tree.ts';

/** What a formula may refer to. */
export interface Scope {
  readonly functions: Functions;
  /** Undefined for a name that does not exist; `kind` is undefined where the named cell is itself at fault. */
  lookUp(name: string): { readonly kind: Kind | undefined } | undefined;
  names(): readonly string[];
}

/** What the rules of single node types work with. */
export interface Checker {
  readonly scope: Scope;
  kindOf(node: Expression): Kind | undefined;
  /** Reports and gives undefined, so that a rule can end with it. */
  report<C extends ProblemCode>(code: C, where: Span, details: Details<C>): undefined;
  add(problem: Problem): undefined;
  /** An operand for people: `3 in (length)`. */
  describe(node: Expression, kind: Kind): string;
}
