import type { Kind, Row, Value } from '../language/kind.ts';
import type { Book } from '../sheet/book.ts';
import type { Cell } from '../sheet/cell.ts';
import type { Frame } from '../sheet/frame.ts';
import { showValue } from '../sheet/show.ts';
import { signWords } from '../sheet/sign-words.ts';
import { outcomeOf } from '../sheet/solve.ts';
import { warningsOf } from '../sheet/warnings.ts';
import type { Unit } from '../units/unit.ts';
import { recordSpread } from './record-spread.ts';
import type { ResultRecord, ResultValue } from './solve-record.ts';

/** Everything that a sheet works out, by name, in the sheet's order and units. */
export function recordResults(
  book: Book,
  frame: Frame,
  sheet: string,
): Readonly<Record<string, ResultRecord>> {
  const worked = listResults(book, sheet);
  return Object.fromEntries(worked.map((cell) => [cell.name, recordResult(book, frame, cell)]));
}

/** Cells that a sheet works out: formulas and chains of dimensions. */
export function listResults(book: Book, sheet: string): readonly Cell[] {
  return book.cellsOf(sheet).filter(({ role }) => role === 'work' || role === 'stack');
}

function recordResult(book: Book, frame: Frame, cell: Cell): ResultRecord {
  const outcome = outcomeOf(book, frame, cell.index);
  const { kind, display } = cell;
  if (outcome.state === 'blank')
    return { value: null, unit: unitOf(cell)?.symbol ?? '', text: 'is blank' };
  if (outcome.state !== 'value' || kind === undefined) {
    const text = outcome.state === 'value' ? '' : outcome.problem.message;
    return { value: null, unit: unitOf(cell)?.symbol ?? '', text };
  }
  const { text, unit } = showValue(outcome.value, kind, display);
  const value = convertValue(outcome.value, unit);
  return {
    value,
    unit: unit?.symbol ?? '',
    text: [addWords(text, cell, outcome.value), ...listDoubts(book, frame, cell)].join(' '),
    ...recordSpread(book, frame, cell, unit?.factor ?? 1),
  };
}

/** The unit stays the same whether there is a value or not. */
export function unitOf({ kind, display }: Cell): Unit | undefined {
  return kind === undefined ? display.unit : showValue(emptyOf(kind), kind, display).unit;
}

function emptyOf(kind: Kind): Value {
  return kind.type === 'list' ? new Float64Array() : kind.type === 'quantity' ? 0 : '';
}

/** A value is given outside of what its formula is good for as well, and says so. */
function listDoubts(book: Book, frame: Frame, { index }: Cell): readonly string[] {
  const sentences = warningsOf(book, frame, index);
  return sentences.map((sentence) => `(Outside what this is good for: ${sentence})`);
}

/** What the sign of a result tells one to do stands after it, as on the page. */
function addWords(text: string, cell: Cell, value: Value): string {
  if (cell.role !== 'work' || typeof value !== 'number') return text;
  const words = signWords(cell.statement.signs, value, cell.display);
  return words === undefined ? text : `${text}. ${words}`;
}

export function convertValue(value: Value, unit: Unit | undefined): ResultValue {
  const factor = unit?.factor ?? 1;
  if (typeof value === 'number') return value / factor;
  if (value instanceof Float64Array) return Array.from(value, (each) => each / factor);
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (!Array.isArray(value)) return (value as Row).key;
  return value.map((item: string | Row) => (typeof item === 'string' ? item : item.key));
}
