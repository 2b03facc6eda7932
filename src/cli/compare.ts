import { parseJob } from '../job/read-job.ts';
import { type Job, NEW_JOB, withEntry } from '../job/record.ts';
import { withDifference, withVariant } from '../job/variants.ts';
import { type Column, workColumns } from '../job/work-columns.ts';
import type { Cell } from '../sheet/cell.ts';
import { type Compared, compareResults } from '../sheet/compare/compare.ts';
import { originOf } from '../sheet/origin.ts';
import type { CompareCommand } from './command.ts';
import type { ComparedRecord, CompareRecord } from './compare-record.ts';
import { formatCompared } from './format-compared.ts';
import type { Loaded } from './load-book.ts';
import { nameResult } from './name-result.ts';
import { complainOf, openSheet } from './open-sheet.ts';
import { plainBlanks } from './plain-blanks.ts';
import { recordProblem } from './problem-record.ts';
import { convertValue, listResults, unitOf } from './record-results.ts';
import { DONE, type ExitCode, PROBLEM, refuse, type Terminal } from './terminal.ts';

const HINT = 'See npx layshaft help compare';
/** The column of the job itself. */
const AS_IT_IS = 'As it is';

/** `layshaft compare`: sets proposals beside the sheet as it is. */
export function compare(command: CompareCommand, terminal: Terminal): ExitCode {
  const open = openSheet(command, command.givens, terminal);
  if (typeof open === 'number') return open;
  if (open.refused.length > 0) return complainOf(open.refused, terminal);
  const stored = readJob(command, terminal);
  if (typeof stored === 'string') return refuse(terminal, stored, HINT);
  const cells = nameResults(open, command.results);
  if (typeof cells === 'string') return refuse(terminal, cells, HINT);
  const columns = workColumns(open.book, addVariants(open, command, stored));
  const record = recordCompared(open, columns, cells);
  const text = command.json
    ? `${JSON.stringify(record, null, 2)}\n`
    : formatCompared(open.sheet, record);
  terminal.write(plainBlanks(text));
  const isSound = record.problems.length + record.columns.flatMap((c) => c.problems).length === 0;
  return isSound ? DONE : PROBLEM;
}

function readJob({ job: path }: CompareCommand, terminal: Terminal): Job | string {
  if (path === undefined) return NEW_JOB;
  const text = terminal.readText(path);
  if (text === undefined) return `there is no file "${path}"`;
  const reading = parseJob(text);
  return reading.ok ? reading.job : `${path}: ${reading.message}`;
}

/** Values that are carried in are entered where they come from, so that every sheet sees them. */
function addVariants({ book, sheet }: Loaded, command: CompareCommand, stored: Job): Job {
  const home = (name: string) => {
    const cell = originOf(book, book.find(sheet.name, name));
    return cell === undefined ? ([sheet.name, name] as const) : ([cell.sheet, cell.name] as const);
  };
  const job = command.givens.reduce<Job>(
    (typed, { name, entry }) => withEntry(typed, ...home(name), { text: entry }),
    stored,
  );
  return command.variants.reduce((before, { name, differences }) => {
    const begun = withVariant(before, name);
    const own = begun.variants.at(-1)!.name;
    return differences.reduce(
      (after, { name: given, entry }) => withDifference(after, own, ...home(given), entry),
      begun,
    );
  }, job);
}

function nameResults({ book, sheet }: Loaded, names: readonly string[]): readonly Cell[] | string {
  if (names.length === 0) return listResults(book, sheet.name);
  const cells = names.map((name) => nameResult(book, sheet.name, name));
  return cells.find((cell) => typeof cell === 'string') ?? (cells as readonly Cell[]);
}

function recordCompared(
  { book, sheet }: Loaded,
  columns: readonly Column[],
  cells: readonly Cell[],
): CompareRecord {
  const compared = compareResults(
    book,
    columns.map(({ frame }) => frame),
    cells.map(({ index }) => index),
  );
  return {
    sheet: sheet.name,
    columns: columns.map(({ variant, faults }) => ({
      name: variant ?? AS_IT_IS,
      problems: faults,
    })),
    results: Object.fromEntries(compared.map((one) => [one.cell.name, recordOne(one)])),
    problems: book.problems.map((problem) => recordProblem(problem)),
  };
}

function recordOne({ cell, columns, differs }: Compared): ComparedRecord {
  const factor = unitOf(cell);
  return {
    label: cell.label,
    unit: factor?.symbol ?? '',
    values: columns.map(({ outcome }) =>
      outcome?.state === 'value' ? convertValue(outcome.value, factor) : null,
    ),
    texts: columns.map(({ text }) => text),
    differences: columns.map(({ difference }) => difference ?? null),
    differs,
  };
}
