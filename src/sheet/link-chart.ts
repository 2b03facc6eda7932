import { type Kind, nameKind } from '../language/kind.ts';
import { fail, type Span } from '../language/problem.ts';
import type { Expression, NameNode } from '../language/tree.ts';
import { type Dimension, equalDimensions, NONE, nameDimension } from '../units/dimension.ts';
import type { Unit } from '../units/unit.ts';
import type { Chart, Formula, LinkedChart } from './cell.ts';
import { inferDisplayUnit } from './display-unit.ts';
import { findCell, findGiven, type SoundCell } from './find-cell.ts';
import { attemptLink, LinkFault, linkFault } from './link-fault.ts';
import { type LinkContext, linkFormula } from './link-formula.ts';
import { originOf } from './origin.ts';
import { linkRange } from './range-fault.ts';
import type { ChartMark, ChartStatement, Sheet } from './sheet.ts';

/** Links a chart: its names, the dimensions of its axes, marks and limits. */
export function linkChart(statement: ChartStatement, sheet: Sheet, context: LinkContext): Chart {
  const base = { sheet: sheet.name, statement };
  return { ...base, ...attemptLink(sheet, () => createLinked(statement, sheet, context)) };
}

function createLinked(statement: ChartStatement, sheet: Sheet, context: LinkContext): LinkedChart {
  const find = (node: NameNode) => findCell(node, sheet, context);
  const link = (tree: Expression, dimension: Dimension, where: string) =>
    linkValue(tree, dimension, where, sheet, context);
  const over = findGiven(statement.over, 'a chart runs over', sheet, context);
  const results = statement.results.map(find);
  const x = quantityDimension(over.kind, statement.over);
  const y = numericDimension(results[0]!.kind, statement.results[0]!, 'a chart');
  for (const [i, result] of results.entries()) {
    const node = statement.results[i]!;
    expectDimension(numericDimension(result.kind, node, 'a chart'), y, node, 'the axis up');
  }
  const unit = statement.unit ?? results[0]!.display.unit ?? inferDisplayUnit(y, []);
  if (unit !== undefined) expectUnit(unit, y, statement.results[0]!);
  const against = linkAgainst(statement, results, sheet, context);
  const up = against === undefined ? y : quantityDimension(against.kind, statement.against!.over);
  return {
    over: over.index,
    ...(against === undefined ? {} : { against: against.linked }),
    results: results.map(({ index }) => index),
    ...linkRange(statement.range, (end) => link(end, x, 'the range'), sheet, context),
    marks: statement.marks.map((mark) => linkMark(mark, x, up, sheet, context)),
    limits: statement.limits.map(({ least: from, most: to, label }) => {
      const ends = linkRange({ from, to }, (end) => link(end, y, 'a limit'), sheet, context);
      return { least: ends.from, most: ends.to, label };
    }),
    ...units(over.display.unit, unit),
    ...lineNames(statement, find),
  };
}

/** What runs up a map, which draws one result that is one quantity. */
function linkAgainst(
  { against, results: nodes }: ChartStatement,
  results: readonly SoundCell[],
  sheet: Sheet,
  context: LinkContext,
) {
  if (against === undefined) return undefined;
  const [first] = results;
  if (results.length > 1 || first!.kind.type !== 'quantity') {
    const found = results.length > 1 ? 'several results' : nameKind(first!.kind);
    const details = { where: 'a map', expected: 'one result that is one quantity', found };
    throw linkFault('wrong-kind', results.length > 1 ? nodes[1]! : nodes[0]!, details);
  }
  const cell = findCell(against.over, sheet, context);
  const over = (originOf(context, cell) ?? cell) as SoundCell;
  const dimension = quantityDimension(over.kind, against.over);
  const link = (end: Expression) => linkValue(end, dimension, 'the range', sheet, context);
  const ends = linkRange(against.range, link, sheet, context);
  const { unit } = over.display;
  const linked = { over: over.index, ...ends, ...(unit === undefined ? {} : { unit }) };
  return { kind: over.kind, linked };
}

function units(x: Unit | undefined, y: Unit | undefined) {
  return { ...(x === undefined ? {} : { xUnit: x }), ...(y === undefined ? {} : { yUnit: y }) };
}

function lineNames(
  { lines }: ChartStatement,
  find: (node: NameNode) => SoundCell,
): { lines?: number } {
  if (lines === undefined) return {};
  const cell = find(lines);
  if (cell.kind.type === 'texts') return { lines: cell.index };
  const details = {
    where: '"a line for each"',
    expected: 'a list of texts',
    found: nameKind(cell.kind),
  };
  throw linkFault('wrong-kind', lines, details);
}

function numericDimension(kind: Kind, node: Span, where: string): Dimension {
  if (kind.type === 'quantity' || kind.type === 'list') return kind.dimension;
  const details = { where, expected: 'a quantity or a list of them', found: nameKind(kind) };
  throw linkFault('wrong-kind', node, details);
}

/** A list has no single value that could run. */
function quantityDimension(kind: Kind, node: Span): Dimension {
  if (kind.type === 'quantity') return kind.dimension;
  const where = 'the axis across';
  const details = { where, expected: 'one quantity', found: nameKind(kind) };
  throw linkFault('wrong-kind', node, details);
}

function expectDimension(found: Dimension, wanted: Dimension, node: Span, where: string): void {
  if (equalDimensions(found, wanted)) return;
  const details = { where, expected: nameDimension(wanted), found: nameDimension(found) };
  throw linkFault('wrong-dimension', node, details);
}

function expectUnit(unit: Unit, shown: Dimension, { name, ...span }: NameNode): void {
  if (equalDimensions(unit.dimension, shown)) return;
  const [found, unitDimension] = [nameDimension(shown), nameDimension(unit.dimension)];
  const details = { name, found, unit: unit.symbol, unitDimension };
  throw linkFault('wrong-display', span, details);
}

function linkValue(
  tree: Expression,
  dimension: Dimension | undefined,
  where: string,
  sheet: Sheet,
  context: LinkContext,
): Formula {
  const linked = linkFormula(tree, sheet, '', context);
  if ('problems' in linked) throw new LinkFault(linked.problems[0]!);
  const { kind } = linked.formula;
  if (kind.type !== 'quantity') {
    throw new LinkFault(
      fail('wrong-kind', tree, { where, expected: 'one quantity', found: nameKind(kind) }),
    );
  }
  if (dimension !== undefined) expectDimension(kind.dimension, dimension, tree, where);
  return linked.formula;
}

/** A mark stands on the axis of its dimension; up, where both are alike and nothing is said. */
function linkMark(mark: ChartMark, x: Dimension, y: Dimension, sheet: Sheet, context: LinkContext) {
  const formula = linkValue(mark.value, undefined, 'a mark', sheet, context);
  const dimension = 'dimension' in formula.kind ? formula.kind.dimension : NONE;
  const fitting = (['y', 'x'] as const).filter((axis) =>
    equalDimensions(axis === 'y' ? y : x, dimension),
  );
  const axis = mark.axis ?? fitting[0];
  if (axis === undefined || !fitting.includes(axis)) {
    const details = { found: nameDimension(dimension), x: nameDimension(x), y: nameDimension(y) };
    throw linkFault('unclear-axis', mark.value, details);
  }
  return { axis, formula, label: mark.label };
}
