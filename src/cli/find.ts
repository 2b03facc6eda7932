import type { Cell, GivenCell } from '../sheet/cell.ts';
import { elementNames } from '../sheet/element-names.ts';
import { rowsOf } from '../sheet/enter.ts';
import { type Asked, understandQuestion } from '../sheet/find/ask.ts';
import { type Found, findGiven } from '../sheet/find/find-given.ts';
import { createFindShow } from '../sheet/find/find-show.ts';
import { describeFound, describeRows, type FindShow } from '../sheet/find/find-words.ts';
import { type TriedRow, tryRows } from '../sheet/find/try-rows.ts';
import { originOf } from '../sheet/origin.ts';
import { didYouMean } from '../units/nearest.ts';
import type { FindCommand } from './command.ts';
import { listGivens, nearestGivens } from './enter-givens.ts';
import type { FindRecord, StockedRecord } from './find-record.ts';
import { formatFound } from './format-found.ts';
import { nameResult } from './name-result.ts';
import {
  complainOf,
  complainRecords,
  type OpenSheet,
  openSheet,
  sentenceRecord,
} from './open-sheet.ts';
import { plainBlanks } from './plain-blanks.ts';
import { recordProblem } from './problem-record.ts';
import { unitOf } from './record-results.ts';
import { DONE, type ExitCode, PROBLEM, refuse, type Terminal } from './terminal.ts';

const HINT = 'See npx layshaft help find';

/** `layshaft find`: asks a sheet backwards. */
export function find(command: FindCommand, terminal: Terminal): ExitCode {
  const open = openSheet(command, command.givens, terminal);
  if (typeof open === 'number') return open;
  if (open.refused.length > 0) return complainOf(open.refused, terminal);
  const { book, frame, sheet } = open;
  const result = nameResult(book, sheet.name, command.result);
  if (typeof result === 'string') return refuse(terminal, result, HINT);
  const given = originOf(book, book.find(sheet.name, command.by));
  if (given?.role !== 'given') return refuse(terminal, refuseGiven(open, command.by, given), HINT);
  const element = placeOf(result, command.element, elementNames(book, frame, result));
  if (typeof element === 'string') return refuse(terminal, element, HINT);
  return answer(open, command, { result, given, element }, terminal);
}

interface Sought {
  readonly result: Cell;
  readonly given: GivenCell;
  readonly element: { readonly place: number; readonly name: string | undefined };
}

function refuseGiven({ book, sheet }: OpenSheet, name: string, cell: Cell | undefined): string {
  if (cell !== undefined) return `${name} is worked out; --by takes what is measured or chosen`;
  const near = didYouMean(nearestGivens(name, listGivens(book, sheet.name)));
  return `sheet ${sheet.name} has no reading "${name}"${near}`;
}

/** Which number of the result is meant. */
function placeOf(
  { kind, name }: Cell,
  wanted: string | undefined,
  names: readonly string[] | undefined,
): Sought['element'] | string {
  if (kind?.type !== 'list') {
    return wanted === undefined
      ? { place: 0, name: undefined }
      : `${name} is one quantity; --element is for lists`;
  }
  const offered = names === undefined ? 'a place from 1' : `one of ${names.join(', ')}`;
  if (wanted === undefined) return `${name} is a list; say which of it with --element, ${offered}`;
  const named = names?.findIndex((each) => each.toLowerCase() === wanted.toLowerCase()) ?? -1;
  const place = named >= 0 ? named : Number(wanted) - 1;
  if (!Number.isInteger(place) || place < 0) return `--element needs ${offered}, not "${wanted}"`;
  return { place, name: names?.[place] ?? `no. ${place + 1}` };
}

function answer(
  open: OpenSheet,
  command: FindCommand,
  { result, given, element }: Sought,
  terminal: Terminal,
): ExitCode {
  const { book, frame } = open;
  const asked: Asked = {
    result,
    given,
    element: element.place,
    target: command.target,
    ...(command.from === undefined ? {} : { from: command.from }),
    ...(command.to === undefined ? {} : { to: command.to }),
  };
  const understood = understandQuestion(book, frame, asked);
  if (understood.state === 'refused') {
    return complainRecords([sentenceRecord('question', understood.sentence)], terminal);
  }
  const found =
    understood.state === 'question' ? findGiven(book, frame, understood.question) : undefined;
  const target = understood.state === 'question' ? understood.question.target : understood.target;
  const rows = tryRows(book, frame, given, result, target, element.place);
  const show = createFindShow(given, result, element.name);
  const record = recordFound(open, { result, given, element }, target, found, rows, show);
  const text = command.json
    ? `${JSON.stringify(record, null, 2)}\n`
    : formatFound(open.sheet, record);
  terminal.write(plainBlanks(text));
  return record.problems.length === 0 ? DONE : PROBLEM;
}

function recordFound(
  { book, sheet }: OpenSheet,
  { result, given, element }: Sought,
  target: number,
  found: Found | undefined,
  rows: readonly TriedRow[],
  show: FindShow,
): FindRecord {
  const [units, givenUnit] = [unitOf(result), unitOf(given)];
  const inGiven = (value: number) => value / (givenUnit?.factor ?? 1);
  const inResult = (value: number) => value / (units?.factor ?? 1);
  return {
    sheet: sheet.name,
    result: result.name,
    element: element.name ?? null,
    given: given.sheet === sheet.name ? given.name : given.id,
    target: { value: inResult(target), unit: units?.symbol ?? '', text: show.result(target) },
    range:
      found === undefined
        ? null
        : {
            from: inGiven(found.from),
            to: inGiven(found.to),
            unit: givenUnit?.symbol ?? '',
          },
    depends: found?.depends ?? true,
    sentence: found === undefined ? describeRows(rows, target, show) : describeFound(found, show),
    solutions: (found?.solutions ?? []).map(({ from, to }) => ({
      from: inGiven(from),
      to: inGiven(to),
      text: from === to ? show.given(from) : `${show.given(from)} to ${show.given(to)}`,
    })),
    closest:
      found?.closest === undefined
        ? null
        : { given: inGiven(found.closest.given), result: inResult(found.closest.result) },
    stocked:
      rowsOf(book, given).length > 0
        ? rows.map((row) => recordRow(row, inResult, show))
        : (found?.stocked ?? []).map((tried) => ({
            name: show.given(tried.given),
            given: inGiven(tried.given),
            result: inResult(tried.result),
            text: show.result(tried.result),
          })),
    problems: book.problems.map((problem) => recordProblem(problem)),
  };
}

function recordRow(
  { row, result }: TriedRow,
  inResult: (value: number) => number,
  show: FindShow,
): StockedRecord {
  const isThere = Number.isFinite(result);
  return {
    name: row,
    given: null,
    result: isThere ? inResult(result) : null,
    text: isThere ? show.result(result) : 'no value',
  };
}
