import { nameKind } from '../language/kind.ts';
import { fail } from '../language/problem.ts';
import type { Expression } from '../language/tree.ts';
import { equalDimensions, nameDimension } from '../units/dimension.ts';
import { nearest } from '../units/nearest.ts';
import type { Find, Formula, GivenCell, LinkedFind } from './cell.ts';
import { attemptLink, LinkFault, linkFault } from './link-fault.ts';
import { type LinkContext, linkFormula } from './link-formula.ts';
import type { FindStatement, Sheet } from './sheet.ts';

/** Links a question asked backwards: its given, its result, its target, its range. */
export function linkFind(statement: FindStatement, sheet: Sheet, context: LinkContext): Find {
  const base = { sheet: sheet.name, statement };
  return { ...base, ...attemptLink(sheet, () => createLinked(statement, sheet, context)) };
}

function createLinked(statement: FindStatement, sheet: Sheet, context: LinkContext): LinkedFind {
  const given = findGivenCell(statement, sheet, context);
  const result = link(statement.result, sheet, context);
  const target = link(statement.target, sheet, context);
  expectAlike(result, target, statement.target, 'the target');
  const { range, near } = statement;
  const ends =
    range && [range.from, range.to].map((end) => inGiven(end, given, 'the range', sheet, context));
  if (ends === undefined && given.range === undefined) {
    throw linkFault('missing-range', statement.given, { name: given.name });
  }
  return {
    given: given.index,
    result,
    target,
    ...(ends === undefined ? {} : { from: ends[0]!, to: ends[1]! }),
    ...(near === undefined
      ? {}
      : { near: inGiven(near, given, 'the list after "near"', sheet, context, 'list') }),
  };
}

/** The given of that name, or the one on another sheet that was carried in under it. */
function findGivenCell(
  { given }: FindStatement,
  sheet: Sheet,
  { drafts, cells }: LinkContext,
): GivenCell {
  const own = drafts.names.get(sheet.name)!;
  let cell = cells[own.get(given.name) ?? -1];
  if (cell === undefined) {
    const near = nearest(given.name, [...own.keys()]);
    throw linkFault('unknown-name', given, { name: given.name, near });
  }
  while (cell?.role === 'from' && cell.origin !== undefined) cell = cells[cell.origin];
  if (cell?.role !== 'given') {
    throw linkFault('not-a-given', given, { name: given.name, role: 'worked out' });
  }
  if (cell.kind?.type === 'quantity') return cell;
  const found = cell.kind === undefined ? 'one with an error' : nameKind(cell.kind);
  const details = {
    where: 'a question asked backwards',
    expected: 'a given that is one quantity',
    found,
  };
  throw linkFault('wrong-kind', given, details);
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
  given: GivenCell,
  where: string,
  sheet: Sheet,
  context: LinkContext,
  shape: 'quantity' | 'list' = 'quantity',
): Formula {
  const formula = link(tree, sheet, context, shape);
  expectAlike({ kind: given.kind! }, formula, tree, where);
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
