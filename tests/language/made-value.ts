import type { Columns, Kind, Row, Value } from '../../src/language/kind.ts';
import { NONE } from '../../src/units/dimension.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

/** A value as a test writes it, read without the language that is under test. */
export interface MadeValue {
  readonly kind: Kind;
  /** Undefined for `blank in` (left empty) and `lost in` (an error further up). */
  readonly value: Value | undefined;
  readonly blank: boolean;
}

/**
 * Reads `3 in`, `-2.5`, `[1, 2] in`, `"Heavy"`, `["a", "b"]`, `true`, `blank in`, `lost in`,
 * `{name: "Heavy", rate: 3 N/mm}` for a row and `[{…}, {…}]` for a table.
 */
export function makeValue(text: string): MadeValue {
  const trimmed = text.trim();
  const empty = /^(blank|lost)\b(.*)$/.exec(trimmed);
  if (empty !== null) return { ...makeEmpty(empty[2]!.trim()), blank: empty[1] === 'blank' };
  return { ...makePlain(trimmed), blank: false };
}

type Plain = Omit<MadeValue, 'blank'>;

function makeEmpty(rest: string): Plain {
  if (rest === 'text') return { kind: { type: 'text' }, value: undefined };
  if (rest === 'truth') return { kind: { type: 'truth' }, value: undefined };
  const list = /\blist$/.test(rest);
  const dimension = dimensionOf(rest.replace(/\s*list$/, ''));
  return { kind: { type: list ? 'list' : 'quantity', dimension }, value: undefined };
}

function makePlain(text: string): Plain {
  if (text === 'true' || text === 'false')
    return { kind: { type: 'truth' }, value: text === 'true' };
  if (text.startsWith('{')) return makeRow(text);
  if (text.startsWith('[{')) return makeTable(text);
  if (text.startsWith('["')) return { kind: { type: 'texts' }, value: JSON.parse(text) };
  if (text.startsWith('"')) return { kind: { type: 'text' }, value: JSON.parse(text) };
  return text.startsWith('[') ? makeList(text) : makeQuantity(text);
}

function makeQuantity(text: string): Plain {
  const [, digits, symbol] = /^(\S+)\s*(.*)$/.exec(text)!;
  const value = Number(digits) * factorOf(symbol!);
  if (Number.isNaN(value)) throw new Error(`no value: ${text}`);
  return { kind: { type: 'quantity', dimension: dimensionOf(symbol!) }, value };
}

function makeList(text: string): Plain {
  const close = text.indexOf(']');
  const symbol = text.slice(close + 1).trim();
  const numbers = (JSON.parse(text.slice(0, close + 1)) as number[]).map(
    (number) => number * factorOf(symbol),
  );
  return {
    kind: { type: 'list', dimension: dimensionOf(symbol) },
    value: Float64Array.from(numbers),
  };
}

function makeRow(text: string): { kind: Kind & { columns: Columns }; value: Row } {
  const fields = text
    .slice(1, -1)
    .split(/,\s*(?=[a-z_]+:)/)
    .map((field) => [field.slice(0, field.indexOf(':')), field.slice(field.indexOf(':') + 1)]);
  const made = fields.map(([name, value]) => [name!, makePlain(value!.trim())] as const);
  const cells = new Map(made.map(([name, { value }]) => [name, value!]));
  const columns = new Map(made.map(([name, { kind }]) => [name, kind]));
  return { kind: { type: 'row', columns }, value: { key: String(made[0]![1].value), cells } };
}

function makeTable(text: string): Plain {
  const rows = text
    .slice(1, -1)
    .split(/(?<=\}),\s*/)
    .map(makeRow);
  const { columns } = rows[0]!.kind;
  return { kind: { type: 'table', columns }, value: rows.map(({ value }) => value) };
}

function factorOf(symbol: string): number {
  return symbol === '' ? 1 : parseUnit(symbol)!.factor;
}

function dimensionOf(symbol: string) {
  return symbol === '' ? NONE : parseUnit(symbol)!.dimension;
}
