import type { Functions } from '../language/functions/builtins.ts';
import type { Columns, Kind, Row, Value } from '../language/kind.ts';
import { parseExpression } from '../language/parse.ts';
import { fail, type Problem } from '../language/problem.ts';
import type { Expression } from '../language/tree.ts';
import { unifyKinds } from '../language/unify.ts';
import { partsOf } from '../language/walk.ts';
import {
  type Dimension,
  equalDimensions,
  isNone,
  NONE,
  nameDimension,
} from '../units/dimension.ts';
import type { Unit } from '../units/unit.ts';
import { type ConstantValue, constantValue } from './constant-value.ts';
import type { TableColumn, TableStatement } from './sheet.ts';

export interface TableValues {
  readonly columns: Columns;
  readonly rows: readonly Row[];
  readonly problems: readonly Problem[];
}

type ColumnValues = {
  readonly kind: Kind;
  readonly values: readonly Value[];
  readonly problems: readonly Problem[];
};

/**
 * Turns the text of a table into values. A column holds quantities where every cell is one or its
 * header names a unit, lists where every cell is one, else text.
 *
 * @param file for the places of bad cells
 */
export function readTableRows(
  table: TableStatement,
  functions: Functions,
  file: string,
): TableValues {
  const read = table.columns.map((column, i) => readColumn(table, column, i, functions, file));
  const rows = table.rows.map((cells, r) => ({
    key: cells[0] ?? '',
    cells: new Map(table.columns.map((column, i) => [column.name, read[i]!.values[r]!])),
  }));
  return {
    columns: new Map(table.columns.map((column, i) => [column.name, read[i]!.kind])),
    rows,
    problems: read.flatMap(({ problems }) => problems),
  };
}

function readColumn(
  table: TableStatement,
  column: TableColumn,
  index: number,
  functions: Functions,
  file: string,
): ColumnValues {
  const texts = table.rows.map((cells) => cells[index]!);
  const values = texts.map((text) => readCell(text, column.unit, functions));
  if (isTextColumn(column, values)) return { kind: { type: 'text' }, values: texts, problems: [] };
  const kind = values.find((value) => 'kind' in value)?.kind ?? columnKind(column);
  const problems: Problem[] = [];
  const found = values.map((value, r) => {
    const message = 'kind' in value ? misfit(kind, value.kind) : value.message;
    if (message === undefined) return (value as ConstantValue).value;
    const details = { found: texts[r]!, column: column.name, message };
    const place = { file, line: table.lines[r]!, column: 1 };
    problems.push({ ...fail('bad-cell', table, details), place });
    return kind.type === 'list' ? new Float64Array() : Number.NaN;
  });
  return { kind: withoutLength(kind), values: found, problems };
}

function isTextColumn(column: TableColumn, values: readonly (ConstantValue | Problem)[]): boolean {
  if (column.unit !== undefined) return false;
  const first = values[0];
  return (
    values.some((v) => !('kind' in v)) ||
    (first !== undefined && 'kind' in first && first.kind.type === 'text')
  );
}

function columnKind({ unit }: TableColumn): Kind {
  return { type: 'quantity', dimension: unit?.dimension ?? NONE };
}

function withoutLength(kind: Kind): Kind {
  return kind.type === 'list' ? { type: 'list', dimension: kind.dimension } : kind;
}

function misfit(kind: Kind, found: Kind): string | undefined {
  return unifyKinds(kind, found) === undefined
    ? 'it is of another kind than the cells above'
    : undefined;
}

/** A bare number is in the unit of the header; a cell may name another unit of the same dimension. */
function readCell(
  text: string,
  unit: Unit | undefined,
  functions: Functions,
): ConstantValue | Problem {
  const tree = parseExpression(text, 'sheet');
  if ('code' in tree) return tree;
  const constant = constantValue(tree, functions, text);
  if ('code' in constant || unit === undefined) return constant;
  return inUnit(constant, unit, tree);
}

function inUnit(constant: ConstantValue, unit: Unit, tree: Expression): ConstantValue | Problem {
  const { kind, value } = constant;
  if (kind.type !== 'quantity' && kind.type !== 'list') {
    return fail('unreadable-entry', tree, { message: `a number in ${unit.symbol} belongs here` });
  }
  const scaled = { ...kind, dimension: unit.dimension };
  if (!isBare(kind.dimension, tree) && equalDimensions(kind.dimension, unit.dimension))
    return { ...constant, kind: scaled };
  if (!equalDimensions(kind.dimension, NONE)) {
    const message = `it is ${nameDimension(kind.dimension)}, the column is in ${unit.symbol}`;
    return fail('unreadable-entry', tree, { message });
  }
  const { factor } = unit;
  const si =
    typeof value === 'number' ? value * factor : (value as Float64Array).map((x) => x * factor);
  return { value: si, kind: scaled };
}

/** Per cent has the dimension of a plain number, so there the unit itself has to be looked for. */
function isBare(dimension: Dimension, tree: Expression): boolean {
  const namesUnit = (node: Expression): boolean =>
    (node.type === 'quantity' && node.unit !== '') || partsOf(node).some(namesUnit);
  return isNone(dimension) && !namesUnit(tree);
}
