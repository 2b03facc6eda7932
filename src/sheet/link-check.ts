import { type Kind, nameKind } from '../language/kind.ts';
import { fail, type Problem } from '../language/problem.ts';
import type { Expression } from '../language/tree.ts';
import { unifyKinds } from '../language/unify.ts';
import type { Check, Formula } from './cell.ts';
import { type CheckDraft, namesOfCheck } from './drafts.ts';
import { type LinkContext, linkFormula } from './link-formula.ts';
import { placeProblem } from './places.ts';
import { rangeFault } from './range-fault.ts';

/** Links an acceptance window: its subject and limits must be of one dimension. */
export function linkCheck(
  { sheet, statement }: CheckDraft,
  index: number,
  context: LinkContext,
): Check {
  const own = context.drafts.names.get(sheet.name)!;
  const base = {
    index,
    sheet: sheet.name,
    statement,
    subject: own.get(statement.name),
    inputs: namesOfCheck(statement).flatMap((name) => own.get(name) ?? []),
  };
  const link = (tree: Expression) => linkFormula(tree, sheet, statement.name, context);
  const subject = link(statement.subject);
  if ('problems' in subject) return { ...base, problem: subject.problems[0]! };
  const limits: { least?: Formula; most?: Formula; equals?: Formula } = {};
  for (const side of ['least', 'most', 'equals'] as const) {
    const tree = statement[side];
    if (tree === undefined) continue;
    const limit = link(tree);
    if ('problems' in limit) return { ...base, problem: limit.problems[0]! };
    const problem = misfit(subject.formula, limit.formula, side, sheet.source);
    if (problem !== undefined)
      return { ...base, problem: placeProblem(problem, sheet.places, statement.name) };
    limits[side] = limit.formula;
  }
  const fault = swappedEnds(statement, sheet.source, context);
  if (fault !== undefined)
    return { ...base, problem: placeProblem(fault, sheet.places, statement.name) };
  return { ...base, ...limits };
}

/** A window of which both sides are written out, and through which nothing can pass. */
function swappedEnds(
  { least: from, most: to }: CheckDraft['statement'],
  source: string,
  { functions }: LinkContext,
): Problem | undefined {
  if (from === undefined || to === undefined) return undefined;
  return rangeFault({ from, to }, functions, source);
}

function misfit(
  subject: Formula,
  limit: Formula,
  side: 'least' | 'most' | 'equals',
  source: string,
): Problem | undefined {
  const { kind } = subject;
  if (side === 'equals' && kind.type === 'text' && limit.kind.type === 'text') return undefined;
  const single: Kind =
    kind.type === 'list' ? { type: 'quantity', dimension: kind.dimension } : kind;
  if (single.type !== 'quantity') {
    return fail('wrong-kind', subject.tree, {
      where: 'a check',
      expected: side === 'equals' ? 'a quantity, a list or a text' : 'a quantity or a list',
      found: nameKind(kind),
    });
  }
  if (unifyKinds(single, limit.kind) !== undefined) return undefined;
  const describe = ({ tree }: Formula, named: Kind) =>
    `${source.slice(tree.from, tree.to)} (${nameKind(named)})`;
  const [left, right] = [describe(subject, single), describe(limit, limit.kind)];
  return fail('dimension-mismatch', limit.tree, { action: 'compare', left, right });
}
