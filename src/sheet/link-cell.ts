import { nameKind } from '../language/kind.ts';
import { fail, type Problem } from '../language/problem.ts';
import type { Expression } from '../language/tree.ts';
import { equalDimensions, nameDimension } from '../units/dimension.ts';
import { nearest } from '../units/nearest.ts';
import type { Unit } from '../units/unit.ts';
import type { Cell, Formula } from './cell.ts';
import { inferDisplayUnit } from './display-unit.ts';
import { type Draft, nearNames } from './drafts.ts';
import { linkFormula } from './link-formula.ts';
import { linkGiven } from './link-given.ts';
import { type Base, broken, type CellContext, type Linked } from './linked.ts';
import { placeProblem } from './places.ts';
import type { Display, StackStatement } from './sheet.ts';
import { readTableRows } from './table-rows.ts';
import { whyBroken } from './waiting.ts';

/** Links one cell: its kind, its formula, its unit of display. */
export function linkCell(draft: Draft, context: CellContext): Linked {
  const base = createBase(draft, context);
  if (context.loop !== undefined) return broken(draft, base, [context.loop], []);
  switch (draft.role) {
    case 'given':
      return linkGiven(draft, base, context);
    case 'from':
      return linkFrom(draft, base, context);
    case 'work':
      return linkWork(draft, base, context);
    case 'stack':
      return linkStack(draft, base, context);
    case 'table':
      return linkTable(draft, base, context);
    default:
      return draft satisfies never;
  }
}

function createBase(draft: Draft, { inputs }: CellContext): Base {
  const { statement, sheet, index } = draft;
  return {
    index,
    id: `${sheet.name}/${statement.name}`,
    sheet: sheet.name,
    name: statement.name,
    label: statement.label,
    place: statement.place,
    display: 'display' in statement ? statement.display : {},
    inputs,
    ...(statement.source === undefined ? {} : { source: statement.source }),
  };
}

type Drafted<R extends Draft['role']> = Extract<Draft, { role: R }>;

function linkFrom(draft: Drafted<'from'>, base: Base, context: CellContext): Linked {
  const [index] = context.inputs;
  const { statement, block } = draft;
  if (index === undefined) {
    const problem = { ...missingOrigin(draft, context), cell: statement.name };
    // A block that names no sheet has been told so already.
    return broken(draft, base, [problem], block.sheet === '' ? [] : [problem]);
  }
  const origin = context.cells[index]!;
  const shared = {
    ...base,
    label: statement.labelled ? base.label : origin.label,
    display: origin.display,
  };
  if (origin.kind !== undefined) {
    return {
      cell: { ...shared, kind: origin.kind, role: 'from', statement, origin: index },
      problems: [],
    };
  }
  const waiting = fail('waiting', statement, {
    name: `${block.sheet}: ${origin.name}`,
    why: whyBroken(context.cells, index),
  });
  return broken(
    draft,
    shared,
    [{ ...waiting, place: statement.place, cell: statement.name, waitsFor: origin.name }],
    [],
  );
}

function missingOrigin({ statement, block }: Drafted<'from'>, { drafts }: CellContext): Problem {
  if (!drafts.names.has(block.sheet)) {
    const near = nearest(block.sheet, [...drafts.names.keys()]);
    return {
      ...fail('unknown-sheet', statement, { name: block.sheet, near }),
      place: block.sheetPlace,
    };
  }
  const near = nearNames(drafts, block.sheet, statement.origin);
  return {
    ...fail('unknown-name', statement, { name: statement.origin, near }),
    place: statement.place,
  };
}

function linkWork(draft: Drafted<'work'>, base: Base, context: CellContext): Linked {
  const { statement, sheet } = draft;
  const linked = linkFormula(statement.expression, sheet, statement.name, context);
  if ('problems' in linked) return broken(draft, base, linked.problems, linked.problems);
  const shown = linkDisplay(base, linked.formula, context);
  if ('code' in shown) return broken(draft, base, [shown], [shown]);
  const valid = linkValid(draft, context);
  const { formula } = linked;
  const cell: Cell = {
    ...base,
    display: shown,
    kind: formula.kind,
    role: 'work',
    statement,
    formula,
    ...(valid.formula === undefined ? {} : { valid: valid.formula }),
  };
  return { cell, problems: valid.problems };
}

/** The condition under which a formula holds; a fault in it does not bar the result. */
function linkValid(
  { statement, sheet }: Drafted<'work'>,
  context: CellContext,
): { readonly formula?: Formula; readonly problems: readonly Problem[] } {
  if (statement.valid === undefined) return { problems: [] };
  const { condition } = statement.valid;
  const linked = linkFormula(condition, sheet, statement.name, context);
  if ('problems' in linked) return linked;
  if (linked.formula.kind.type === 'truth') return { formula: linked.formula, problems: [] };
  const details = {
    where: '"valid when"',
    expected: 'a comparison such as angle < 6 deg',
    found: nameKind(linked.formula.kind),
  };
  return {
    problems: [placeProblem(fail('wrong-kind', condition, details), sheet.places, statement.name)],
  };
}

function linkStack(draft: Drafted<'stack'>, base: Base, context: CellContext): Linked {
  const { statement, sheet } = draft;
  const linked = linkFormula(sumOf(statement), sheet, statement.name, context);
  if ('problems' in linked) return broken(draft, base, linked.problems, linked.problems);
  const shown = linkDisplay(base, linked.formula, context);
  if ('code' in shown) return broken(draft, base, [shown], [shown]);
  const terms = statement.terms.flatMap(({ expression }) => {
    const term = linkFormula(expression, sheet, statement.name, context);
    return 'formula' in term ? [term.formula] : [];
  });
  const { formula } = linked;
  return {
    cell: { ...base, display: shown, kind: formula.kind, role: 'stack', statement, formula, terms },
    problems: [],
  };
}

/** The chain as one formula: + and − from left to right. */
export function sumOf({ terms }: StackStatement): Expression {
  return terms.map(signed).reduce((left, right, i) => {
    const { sign, expression } = terms[i]!;
    const operator = sign === 1 ? '+' : '-';
    return { type: 'binary', operator, left, right: expression, from: left.from, to: right.to };
  });
}

function signed({ sign, expression, from, to }: StackStatement['terms'][number]): Expression {
  return sign === 1 ? expression : { type: 'unary', operator: '-', operand: expression, from, to };
}

/** The unit that a result is shown in: as its sheet says, else one met on the way. */
function linkDisplay(base: Base, formula: Formula, context: CellContext): Display | Problem {
  const { kind, tree } = formula;
  const { unit } = base.display;
  if (kind.type !== 'quantity' && kind.type !== 'list') {
    return unit === undefined ? base.display : wrongDisplay(base, unit, nameKind(kind), tree);
  }
  if (unit !== undefined) {
    const fits = equalDimensions(unit.dimension, kind.dimension);
    return fits ? base.display : wrongDisplay(base, unit, nameKind(kind), tree);
  }
  const met = base.inputs.flatMap((index) => context.cells[index]?.display.unit ?? []);
  const inferred = inferDisplayUnit(kind.dimension, met);
  return inferred === undefined ? base.display : { ...base.display, unit: inferred };
}

function wrongDisplay(base: Base, unit: Unit, found: string, tree: Expression): Problem {
  const details = {
    name: base.name,
    found,
    unit: unit.symbol,
    unitDimension: nameDimension(unit.dimension),
  };
  return { ...fail('wrong-display', tree, details), place: base.place, cell: base.name };
}

function linkTable(draft: Drafted<'table'>, base: Base, { functions }: CellContext): Linked {
  const { statement, sheet } = draft;
  const { columns, rows, problems } = readTableRows(statement, functions, sheet.file);
  return {
    cell: { ...base, kind: { type: 'table', columns }, role: 'table', statement, rows },
    problems: problems.map((problem) => ({ ...problem, cell: statement.name })),
  };
}
