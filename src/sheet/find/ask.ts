import { numberCode } from '../../language/code.ts';
import { readEntry } from '../../language/entry.ts';
import type { Kind } from '../../language/kind.ts';
import { unitIn } from '../../units/counterpart.ts';
import type { System } from '../../units/unit.ts';
import type { Book } from '../book.ts';
import type { Cell, Formula, GivenCell } from '../cell.ts';
import { rowsOf } from '../enter.ts';
import type { Frame } from '../frame.ts';
import { upstreamOf } from '../upstream.ts';
import type { Question } from './find-given.ts';

/** A question as a person puts it together: which given makes this result meet that target? */
export interface Asked {
  readonly result: Cell;
  /** Which number of a list, from 0. */
  readonly element?: number;
  readonly given: GivenCell;
  /** As typed; a bare number is in the unit that the result is shown in. */
  readonly target: string;
  /** As typed, in the given's unit; its own range where both are left out or blank. */
  readonly from?: string;
  readonly to?: string;
}

export type Understood =
  | { readonly state: 'question'; readonly question: Question & { readonly target: number } }
  /** The given is no single figure, but it is picked from a table: its rows can be tried. */
  | { readonly state: 'rows'; readonly target: number }
  | { readonly state: 'refused'; readonly sentence: string };

/**
 * The givens that a result can be asked back to: those that it hangs on and that are one quantity or
 * are picked from a table. Those of the result's own sheet come first.
 */
export function listAskable(book: Book, result: Cell): readonly GivenCell[] {
  const upstream = upstreamOf(book.cells, [result.index]);
  const givens = book.cells.filter(
    (cell): cell is GivenCell =>
      cell.role === 'given' &&
      upstream.has(cell.index) &&
      (cell.kind?.type === 'quantity' || rowsOf(book, cell).length > 0),
  );
  const own = givens.filter(({ sheet }) => sheet === result.sheet);
  return [...own, ...givens.filter(({ sheet }) => sheet !== result.sheet)];
}

/** Reads target and range; a sentence where one of them cannot be understood. */
export function understandQuestion(
  book: Book,
  frame: Frame,
  asked: Asked,
  system?: System,
): Understood {
  const { result, given } = asked;
  const target = readNumber(asked.target, result, system);
  if (typeof target === 'string') return refuse(`Target: ${target}.`);
  if (target === undefined) return refuse('Type what the result should be.');
  if (given.kind?.type !== 'quantity') {
    return rowsOf(book, given).length > 0
      ? { state: 'rows', target }
      : refuse(`${given.label} is not one quantity, so there is no range to search.`);
  }
  const ends = readRange(frame, asked, system);
  if (typeof ends === 'string') return refuse(ends);
  const near = listStock(book, frame, given);
  const question = {
    sheet: result.sheet,
    given: given.index,
    result: createFormula(result, asked.element ?? 0),
    target,
    ...ends,
  };
  return { state: 'question', question: near.length === 0 ? question : { ...question, near } };
}

function refuse(sentence: string): Understood {
  return { state: 'refused', sentence };
}

/** SI; a text says what is wrong, undefined stands for nothing typed. */
function readNumber(
  text: string,
  cell: Cell,
  system: System | undefined,
): number | string | undefined {
  const kind = singleKind(cell);
  if (kind === undefined) return `${cell.label} holds no numbers`;
  const { unit } = cell.display;
  const shown = unit === undefined || system === undefined ? unit : unitIn(unit, system);
  const reading = readEntry(text, { kind, ...(shown === undefined ? {} : { unit: shown }) });
  if (reading.state === 'failed') return reading.problem.message;
  return reading.state === 'blank' ? undefined : (reading.value as number);
}

function singleKind({ kind }: Cell): Kind | undefined {
  return kind?.type === 'quantity' || kind?.type === 'list'
    ? { type: 'quantity', dimension: kind.dimension }
    : undefined;
}

/** A given without a range of its own is searched from a quarter to four times what it is. */
const AROUND = 4;

function readRange(
  { memory }: Frame,
  { given, from = '', to = '' }: Asked,
  system: System | undefined,
): { readonly from: number; readonly to: number } | string {
  const [low, high] = [from, to].map((text) => readNumber(text, given, system));
  if (typeof low === 'string') return `From: ${low}.`;
  if (typeof high === 'string') return `To: ${high}.`;
  const present = memory.numbers[given.index]!;
  const around = [present / AROUND, present * AROUND].sort((a, b) => a - b);
  const ends = {
    from: low ?? given.range?.from ?? around[0]!,
    to: high ?? given.range?.to ?? around[1]!,
  };
  if (ends.from === ends.to || !Number.isFinite(ends.from + ends.to)) {
    return `${given.label} has no range in the sheet: say from where to where to search.`;
  }
  return ends;
}

/** Sizes in stock that the sheets name for a given: in a `find`, or as a column that it is picked from. */
function listStock(book: Book, frame: Frame, given: GivenCell): readonly number[] {
  const lists = book.finds
    .filter(({ linked }) => linked?.given === given.index && linked.near !== undefined)
    .map(({ linked }) => linked!.near!.code.run(frame.memory) as Float64Array | undefined);
  const { value } = given.statement;
  const column = value.type === 'pick' ? value.column : undefined;
  const picked = rowsOf(book, given).map(({ cells }) => cells.get(column ?? ''));
  const sizes = [...lists.flatMap((list) => [...(list ?? [])]), ...picked];
  return [...new Set(sizes.filter((size) => typeof size === 'number'))];
}

/** One number of a result as a formula of its own. */
function createFormula(cell: Cell, element: number): Formula {
  const { index } = cell;
  const isList = cell.kind?.type === 'list';
  const run = isList
    ? ({ others }: Frame['memory']) =>
        (others[index] as Float64Array | undefined)?.[element] ?? Number.NaN
    : ({ numbers }: Frame['memory']) => numbers[index]!;
  return {
    tree: { type: 'name', name: cell.name, from: 0, to: 0 },
    kind: singleKind(cell)!,
    kinds: new Map(),
    code: numberCode(run),
  };
}
