import type { Functions } from '../language/functions/builtins.ts';
import { fail, type Problem } from '../language/problem.ts';
import type { Expression } from '../language/tree.ts';
import type { Formula } from './cell.ts';
import { constantValue } from './constant-value.ts';
import { LinkFault } from './link-fault.ts';
import type { LinkContext } from './link-formula.ts';
import type { Sheet } from './sheet.ts';

/** A range as a sheet writes it. */
export interface WrittenRange {
  readonly from: Expression;
  readonly to: Expression;
}

/**
 * What is wrong with a range whose ends are written out: that they are swapped, or one and the same.
 * Ends that name values may move, and are not judged here.
 */
export function rangeFault(
  { from, to }: WrittenRange,
  functions: Functions,
  source: string,
): Problem | undefined {
  const [low, high] = [from, to].map((end) => constantValue(end, functions, source));
  if (low === undefined || high === undefined || 'code' in low || 'code' in high) return undefined;
  if ((low.value as number) < (high.value as number)) return undefined;
  const quote = (tree: Expression) => source.slice(tree.from, tree.to);
  return fail('range-order', from, { from: quote(from), to: quote(to) });
}

/** Links both ends of a range. Throws a LinkFault. */
export function linkRange(
  range: WrittenRange,
  link: (end: Expression) => Formula,
  sheet: Sheet,
  { functions }: LinkContext,
): { readonly from: Formula; readonly to: Formula } {
  const linked = { from: link(range.from), to: link(range.to) };
  const fault = rangeFault(range, functions, sheet.source);
  if (fault !== undefined) throw new LinkFault(fault);
  return linked;
}
