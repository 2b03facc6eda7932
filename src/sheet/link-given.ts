import { inferEntry } from '../language/entry.ts';
import { type Columns, type Kind, nameKind } from '../language/kind.ts';
import { fail, type Problem } from '../language/problem.ts';
import type { Expression } from '../language/tree.ts';
import { unifyKinds } from '../language/unify.ts';
import { equalDimensions, NONE, nameDimension } from '../units/dimension.ts';
import { nearest } from '../units/nearest.ts';
import type { Unit } from '../units/unit.ts';
import type { Cell } from './cell.ts';
import { constantValue } from './constant-value.ts';
import { inferDisplayUnit } from './display-unit.ts';
import { type Draft, nearNames } from './drafts.ts';
import { type Base, broken, type CellContext, type Linked } from './linked.ts';
import { placeProblem } from './places.ts';
import { rangeFault } from './range-fault.ts';
import type { GivenDefault, GivenStatement } from './sheet.ts';

type GivenDraft = Extract<Draft, { role: 'given' }>;

interface Shape {
  readonly kind: Kind;
  readonly unit?: Unit;
  readonly table?: number;
}

/** Links a given: its kind and unit from the value that the sheet holds for it. */
export function linkGiven(draft: GivenDraft, base: Base, context: CellContext): Linked {
  const { statement, sheet } = draft;
  const give = (problem: Problem) => {
    const placed = placeProblem(problem, sheet.places, statement.name);
    return broken(draft, base, [placed], [placed]);
  };
  const shape = shapeOf(statement.value, draft, context);
  if ('code' in shape) return give(shape);
  const range = rangeOf(statement, shape.kind, sheet.source, context);
  if (range !== undefined && 'code' in range) return give(range);
  const unit = statement.display.unit ?? shape.unit ?? usualUnit(shape.kind);
  if (unit !== undefined && !fits(unit, shape.kind))
    return give(wrongDisplay(draft, unit, shape.kind));
  const cell: Cell = {
    ...base,
    display: { ...statement.display, ...(unit === undefined ? {} : { unit }) },
    kind: shape.kind,
    role: 'given',
    statement,
    ...(range === undefined ? {} : { range }),
    ...(shape.table === undefined ? {} : { table: shape.table }),
  };
  return { cell, problems: [] };
}

/** A field that holds a length needs a unit for bare numbers, also where the sheet worked it from others. */
function usualUnit(kind: Kind): Unit | undefined {
  return 'dimension' in kind ? inferDisplayUnit(kind.dimension, []) : undefined;
}

function fits(unit: Unit, kind: Kind): boolean {
  return 'dimension' in kind && equalDimensions(unit.dimension, kind.dimension);
}

function wrongDisplay({ statement }: GivenDraft, unit: Unit, kind: Kind): Problem {
  return fail('wrong-display', statement, {
    name: statement.name,
    found: nameKind(kind),
    unit: unit.symbol,
    unitDimension: nameDimension(unit.dimension),
  });
}

function shapeOf(value: GivenDefault, draft: GivenDraft, context: CellContext): Shape | Problem {
  switch (value.type) {
    case 'entry':
      return shapeOfEntry(value);
    case 'blank':
      return shapeOfBlank(value);
    case 'text':
      return { kind: { type: 'text' } };
    case 'pick':
      return shapeOfPick(value, draft, context);
    default:
      return value satisfies never;
  }
}

/** Places in an entry count from its first character, in a sheet from the sheet's. */
function shapeOfEntry({ text, from }: Extract<GivenDefault, { type: 'entry' }>): Shape | Problem {
  const shape = inferEntry(text)!;
  return 'code' in shape ? { ...shape, from: shape.from + from, to: shape.to + from } : shape;
}

function shapeOfBlank({ unit, list }: Extract<GivenDefault, { type: 'blank' }>): Shape {
  const dimension = unit?.dimension ?? NONE;
  const kind: Kind = list ? { type: 'list', dimension } : { type: 'quantity', dimension };
  return unit === undefined ? { kind } : { kind, unit };
}

type Pick_ = Extract<GivenDefault, { type: 'pick' }>;

function shapeOfPick(pick: Pick_, { sheet }: GivenDraft, context: CellContext): Shape | Problem {
  const [index] = context.inputs;
  const table = index === undefined ? undefined : context.cells[index];
  if (table === undefined) {
    const near = nearNames(context.drafts, sheet.name, pick.table.name);
    return fail('unknown-name', pick.table, { name: pick.table.name, near });
  }
  if (table.role !== 'table' || table.kind?.type !== 'table') {
    const details = {
      where: '"pick"',
      expected: 'a table',
      found: table.kind === undefined ? 'one with an error' : nameKind(table.kind),
    };
    return fail('wrong-kind', pick.table, details);
  }
  const keys = table.rows.map(({ key }) => key);
  if (!keys.includes(pick.row)) {
    return fail('unknown-row', pick.table, {
      table: table.name,
      row: pick.row,
      near: nearest(pick.row, keys),
    });
  }
  const twice = keys.find((key, i) => keys.indexOf(key) < i);
  if (twice !== undefined) {
    return fail('repeated-row', pick.table, { table: table.name, row: twice });
  }
  return shapeOfColumn(pick, table.kind.columns, table);
}

function shapeOfColumn(
  pick: Pick_,
  columns: Columns,
  table: Cell & { role: 'table' },
): Shape | Problem {
  if (pick.column === undefined) return { kind: { type: 'row', columns }, table: table.index };
  const kind = columns.get(pick.column);
  if (kind === undefined) {
    const near = nearest(pick.column, [...columns.keys()]);
    return fail('unknown-field', pick.table, { owner: table.name, field: pick.column, near });
  }
  const unit = table.statement.columns.find(({ name }) => name === pick.column)?.unit;
  return { kind, table: table.index, ...(unit === undefined ? {} : { unit }) };
}

function rangeOf(
  { range }: GivenStatement,
  kind: Kind,
  source: string,
  context: CellContext,
): { readonly from: number; readonly to: number } | Problem | undefined {
  if (range === undefined) return undefined;
  const from = bound(range.from, kind, source, context);
  if (typeof from !== 'number') return from;
  const to = bound(range.to, kind, source, context);
  if (typeof to !== 'number') return to;
  return rangeFault(range, context.functions, source) ?? { from, to };
}

function bound(
  tree: Expression,
  kind: Kind,
  source: string,
  { functions }: CellContext,
): number | Problem {
  const constant = constantValue(tree, functions, source);
  if ('code' in constant) return constant;
  if (kind.type === 'quantity' && unifyKinds(kind, constant.kind) !== undefined)
    return constant.value as number;
  return fail('wrong-dimension', tree, {
    where: 'the range',
    expected: nameKind(kind),
    found: nameKind(constant.kind),
  });
}
