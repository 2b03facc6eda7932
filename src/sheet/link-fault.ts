import { fail, type Problem, type Span } from '../language/problem.ts';
import type { Details, ProblemCode } from '../language/problem-codes.ts';
import { placeProblem } from './places.ts';
import type { Sheet } from './sheet.ts';

/** Thrown while a block is linked, and caught at its edge: linking stops at the first fault. */
export class LinkFault extends Error {
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.message);
    this.problem = problem;
  }
}

/** A fault that ends the linking of its block. */
export function linkFault<C extends ProblemCode>(
  code: C,
  where: Span,
  details: Details<C>,
): LinkFault {
  return new LinkFault(fail(code, where, details));
}

/** Links a block: what it was linked to, or what is wrong with it and where. */
export function attemptLink<T>(
  sheet: Sheet,
  link: () => T,
): { readonly linked: T } | { readonly problem: Problem } {
  try {
    return { linked: link() };
  } catch (fault) {
    if (!(fault instanceof LinkFault)) throw fault;
    return { problem: placeProblem(fault.problem, sheet.places) };
  }
}
