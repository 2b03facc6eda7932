import { nameKind } from '../language/kind.ts';
import { fail } from '../language/problem.ts';
import type { Expression } from '../language/tree.ts';
import { equalDimensions, nameDimension } from '../units/dimension.ts';
import type { Find, Formula, GivenCell, LinkedFind } from './cell.ts';
import { findGiven, type SoundCell } from './find-cell.ts';
import { attemptLink, LinkFault, linkFault } from './link-fault.ts';
import { type LinkContext, linkFormula } from './link-formula.ts';
import { linkRange } from './range-fault.ts';
import type { FindStatement, Sheet } from './sheet.ts';

/** Links a question asked backwards: its given, its result, its target, its range. */
export function linkFind(statement: FindStatement, sheet: Sheet, context: LinkContext): Find {
  const base = { sheet: sheet.name, statement };
  return { ...base, ...attemptLink(sheet, () => createLinked(statement, sheet, context)) };
}

function createLinked(statement: FindStatement, sheet: Sheet, context: LinkContext): LinkedFind {
  const given = findQuantity(statement, sheet, context);
  const result = link(statement.result, sheet, context);
  const target = link(statement.target, sheet, context);
  expectAlike(result, target, statement.target, 'the target');
  const { range, near } = statement;
  const ends =
    range &&
    linkRange(range, (end) => inGiven(end, given, 'the range', sheet, context), sheet, context);
  if (ends === undefined && given.range === undefined) {
    throw linkFault('missing-range', statement.given, { name: given.name });
  }
  return {
    given: given.index,
    result,
    target,
    ...ends,
    ...(near === undefined
      ? {}
      : { near: inGiven(near, given, 'the list after "near"', sheet, context, 'list') }),
  };
}

function findQuantity(
  { given: node }: FindStatement,
  sheet: Sheet,
  context: LinkContext,
): GivenCell & SoundCell {
  const given = findGiven(node, 'a question asked backwards is solved for', sheet, context);
  if (given.kind.type === 'quantity') return given;
  throw linkFault('wrong-kind', node, {
    where: 'a question asked backwards',
    expected: 'a given that is one quantity',
    found: nameKind(given.kind),
  });
}

function link(
  tree: Expression,
  sheet: Sheet,
  context: LinkContext,
  shape: 'quantity' | 'list' = 'quantity',
): Formula {
  const linked = linkFormula(tree, sheet, '', context);
  if ('problems' in linked) throw new LinkFault(linked.problems[0]!);
  const { kind } = linked.formula;
  if (kind.type === shape) return linked.formula;
  const expected =
    shape === 'list' ? 'a list of quantities' : 'one quantity, such as last(engine_speed)';
  throw new LinkFault(
    fail('wrong-kind', tree, { where: '"find"', expected, found: nameKind(kind) }),
  );
}

function inGiven(
  tree: Expression,
  given: GivenCell & SoundCell,
  where: string,
  sheet: Sheet,
  context: LinkContext,
  shape: 'quantity' | 'list' = 'quantity',
): Formula {
  const formula = link(tree, sheet, context, shape);
  expectAlike(given, formula, tree, where);
  return formula;
}

type Kinded = Pick<Formula, 'kind'>;

function expectAlike(wanted: Kinded, found: Kinded, tree: Expression, where: string): void {
  const [a, b] = [wanted.kind, found.kind];
  if ('dimension' in a && 'dimension' in b && !equalDimensions(a.dimension, b.dimension)) {
    const [expected, other] = [nameDimension(a.dimension), nameDimension(b.dimension)];
    throw linkFault('wrong-dimension', tree, { where, expected, found: other });
  }
}
