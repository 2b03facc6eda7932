import { csvParseRows } from 'd3-dsv';
import type { Cursor } from '../../language/cursor.ts';
import { isName } from '../../language/names.ts';
import { fault } from '../../language/parse.ts';
import { fail, type Problem, type Span } from '../../language/problem.ts';
import { unknownUnit } from '../../units/nearest-units.ts';
import { parseUnit } from '../../units/parse-unit.ts';
import { readClauses } from '../clauses.ts';
import { placeProblem } from '../places.ts';
import { readNewName } from '../read-name.ts';
import type { Named, TableBlock, TableColumn, TableStatement } from '../sheet.ts';
import { attempt, type BlockSource, cursorOver } from './block-source.ts';
import { createNamed } from './named.ts';

/** Reads a `table` block: CSV (RFC 4180) with units in the header. */
export function readTableBlock(block: BlockSource): TableBlock {
  const problems: Problem[] = [];
  const heading = attempt(block, problems, () => readHeading(block));
  const body = attempt(block, problems, () => readRecords(block));
  const columns = body && attempt(block, problems, () => readColumns(block, body));
  if (body === undefined || columns === undefined || heading === undefined) {
    return { kind: 'table', line: block.line, problems, table: undefined };
  }
  const rows = body.slice(1);
  problems.push(...raggedRows(block, rows, columns.length));
  const whole = rows.filter(({ cells }) => cells.length === columns.length);
  return {
    kind: 'table',
    line: block.line,
    problems,
    table: createTable(block, heading, columns, whole),
  };
}

function createTable(
  block: BlockSource,
  heading: Named,
  columns: readonly TableColumn[],
  rows: readonly CsvRecord[],
): TableStatement {
  return {
    ...heading,
    columns,
    rows: rows.map(({ cells }) => cells),
    lines: rows.map(({ from }) => block.places(from).line),
  };
}

function readHeading(block: BlockSource): Named {
  const cursor: Cursor = cursorOver(block, block.info);
  const name = readNewName(cursor, 'the name of the table, as in: table springs "Springs"');
  return createNamed(block, name, block.body.to, readClauses(cursor, ['label', 'source']));
}

interface CsvRecord extends Span {
  readonly cells: readonly string[];
}

/** Cuts the body into records; a record runs on while a quotation mark is open. */
function readRecords(block: BlockSource): readonly CsvRecord[] {
  const { source, body } = block;
  const records: CsvRecord[] = [];
  for (let from = body.from; from < body.to; ) {
    const to = endOfRecord(source, from, body.to);
    const text = source.slice(from, to);
    if (quotes(text) % 2 === 1) throw fault('unclosed-cell', { from, to }, undefined);
    if (text.trim() !== '')
      records.push({ cells: csvParseRows(text)[0]!.map((cell) => cell.trim()), from, to });
    from = to + 1;
  }
  if (records.length > 0) return records;
  throw fault('missing-line', block.info, { kind: 'table', example: 'name,thickness (in)' });
}

function endOfRecord(source: string, from: number, end: number): number {
  let open = false;
  for (let i = from; i < end; i += 1) {
    if (source[i] === '"') open = !open;
    else if (source[i] === '\n' && !open) return i;
  }
  return end;
}

function quotes(text: string): number {
  return text.split('"').length - 1;
}

const HEADER = /^([^()]*?)\s*(?:\(([^()]*)\))?$/;

function readColumns(block: BlockSource, records: readonly CsvRecord[]): readonly TableColumn[] {
  const header = records[0]!;
  return header.cells.map((cell, i) => {
    const [, name = '', symbol] = HEADER.exec(cell) ?? [];
    const unit = symbol === undefined ? undefined : parseUnit(symbol.trim());
    const isRepeated = header.cells.findIndex((other) => HEADER.exec(other)?.[1] === name) !== i;
    const span = cellSpan(block, header, cell);
    if (!isName(name)) throw fault('bad-header', span, { found: cell });
    if (isRepeated) throw fault('repeated-clause', span, { clause: name });
    if (symbol !== undefined && unit === undefined) {
      throw fault('unknown-unit', span, { message: unknownUnit(symbol.trim()) });
    }
    return { name, ...(unit === undefined ? {} : { unit }) };
  });
}

function cellSpan({ source }: BlockSource, record: CsvRecord, cell: string): Span {
  const at = source.indexOf(cell, record.from);
  return at >= 0 && at < record.to ? { from: at, to: at + cell.length } : record;
}

function raggedRows(block: BlockSource, rows: readonly CsvRecord[], columns: number): Problem[] {
  return rows
    .filter(({ cells }) => cells.length !== columns)
    .map((row) =>
      placeProblem(fail('ragged-row', row, { cells: row.cells.length, columns }), block.places),
    );
}
