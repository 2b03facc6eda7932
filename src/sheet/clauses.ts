import { type Datum, type DatumKind, ONE_PART, TWO_FACES } from '../drawing/datum-kinds.ts';
import type { Cursor } from '../language/cursor.ts';
import { fault, readExpression, readOperand, unexpected } from '../language/parse.ts';
import type { Expression, NameNode } from '../language/tree.ts';
import { unknownUnit } from '../units/nearest-units.ts';
import { scanUnit } from '../units/parse-unit.ts';
import type { Unit } from '../units/unit.ts';
import { readName } from './read-name.ts';

/** What may stand behind the value of a statement, in any order. */
export interface Clauses {
  readonly label?: string;
  readonly unit?: Unit;
  readonly resolution?: number;
  readonly fraction?: number;
  readonly range?: { readonly from: Expression; readonly to: Expression };
  readonly how?: string;
  readonly datum?: Datum;
  readonly source?: string;
  readonly below?: string;
  readonly above?: string;
  readonly positive?: string;
  readonly negative?: string;
  readonly zero?: string;
  readonly lines?: NameNode;
  readonly against?: {
    readonly over: NameNode;
    readonly range: { readonly from: Expression; readonly to: Expression };
  };
  readonly xLabel?: string;
  readonly yLabel?: string;
  readonly axis?: 'x' | 'y';
  readonly near?: Expression;
  readonly within?: Expression;
  readonly valid?: { readonly condition: Expression; readonly sentence: string };
}

interface ClauseReader {
  /** As shown in messages. */
  readonly shown: string;
  /** Reads what follows the clause's first word. */
  read(cursor: Cursor): Clauses;
}

const said = (key: keyof Clauses, word: string): ClauseReader => ({
  shown: `${word} "…"`,
  read: (cursor) => ({ [key]: readQuoted(cursor, word) }),
});

/** Clauses by their first word; `label` has none, it is the bare text. */
const READERS = {
  as: { shown: 'as UNIT', read: (cursor) => ({ unit: readUnit(cursor) }) },
  to: { shown: 'to 0.001', read: readResolution },
  from: { shown: 'from A to B', read: readRange },
  how: said('how', 'how'),
  datum: { shown: 'datum down "…" to "…"', read: readDatum },
  source: said('source', 'source'),
  below: said('below', 'below'),
  above: said('above', 'above'),
  positive: said('positive', 'positive'),
  negative: said('negative', 'negative'),
  zero: said('zero', 'zero'),
  near: { shown: 'near LIST', read: (cursor) => ({ near: readOperand(cursor) }) },
  within: { shown: 'within 0.001 in', read: (cursor) => ({ within: readOperand(cursor) }) },
  valid: { shown: 'valid when CONDITION "…"', read: readValid },
  a: { shown: 'a line for each NAME', read: readLines },
  and: { shown: 'and NAME from A to B', read: readAgainst },
  x: said('xLabel', 'x'),
  y: said('yLabel', 'y'),
  on: { shown: 'on x', read: (cursor) => ({ axis: readAxis(cursor) }) },
} satisfies Readonly<Record<string, ClauseReader>>;

export type ClauseWord = keyof typeof READERS | 'label';

/** Reads the clauses up to the end of the statement. Throws a ReadFault. */
export function readClauses(cursor: Cursor, allowed: readonly ClauseWord[]): Clauses {
  let clauses: Clauses = {};
  for (let token = cursor.peek(); token.type !== 'end'; token = cursor.peek()) {
    const word = token.type === 'text' ? 'label' : token.type === 'word' ? token.text : '';
    if (!(allowed as readonly string[]).includes(word)) {
      const found = cursor.source.slice(token.from, token.to);
      throw fault('unknown-clause', token, { found, allowed: listShown(allowed) });
    }
    cursor.take();
    const found =
      token.type === 'text'
        ? { label: token.value }
        : READERS[word as keyof typeof READERS].read(cursor);
    const repeated = Object.keys(found).some((key) => key in clauses);
    if (repeated) throw fault('repeated-clause', token, { clause: word });
    clauses = { ...clauses, ...found };
  }
  return clauses;
}

function listShown(allowed: readonly ClauseWord[]): string {
  const shown = allowed.map((word) =>
    word === 'label' ? 'a label in quotation marks' : READERS[word].shown,
  );
  return shown.length === 0 ? 'nothing more' : shown.join(', ');
}

function readQuoted(cursor: Cursor, after: string): string {
  const token = cursor.peek();
  if (token.type !== 'text') throw unexpected(token, `a text in quotation marks after "${after}"`);
  cursor.take();
  return token.value;
}

/** `datum along "block face" to "seal's rim"`, or of one part: `datum across "bush"`. */
function readDatum(cursor: Cursor): Clauses {
  const token = cursor.take();
  const kind = token.type === 'word' ? (token.text as DatumKind) : undefined;
  const hasTwo = (TWO_FACES as readonly unknown[]).includes(kind);
  if (!hasTwo && !(ONE_PART as readonly unknown[]).includes(kind)) {
    throw unexpected(token, [...TWO_FACES, ...ONE_PART].join(', '));
  }
  const from = readQuoted(cursor, kind!);
  if (!hasTwo) return { datum: { kind: kind!, from } };
  readWord(cursor, 'to');
  return { datum: { kind: kind!, from, to: readQuoted(cursor, 'to') } };
}

/** Reads a unit where only a unit can stand. Throws a ReadFault. */
export function readUnit(cursor: Cursor): Unit {
  const at = cursor.position();
  const scanned = scanUnit(cursor.source.slice(0, cursor.end), at, 'sheet');
  if (scanned === undefined) {
    const found = /^\S*/.exec(cursor.source.slice(at, cursor.end))?.[0] ?? '';
    if (found === '') throw unexpected(cursor.peek(), 'a unit, such as mm');
    const span = { from: at, to: at + found.length };
    throw fault('unknown-unit', span, { message: unknownUnit(found) });
  }
  cursor.moveTo(scanned.to);
  return scanned.unit;
}

/** `to 0.001`, or `to 1/64` for a fraction. */
function readResolution(cursor: Cursor): Clauses {
  const number = readPlain(cursor);
  const slash = cursor.peek();
  if (slash.type !== 'symbol' || slash.text !== '/') return { resolution: number };
  cursor.take();
  return { fraction: readPlain(cursor) };
}

function readPlain(cursor: Cursor): number {
  const token = cursor.peek();
  if (token.type !== 'quantity' || token.unit !== undefined || token.value <= 0) {
    throw unexpected(token, 'a number above 0 without a unit, such as 0.001');
  }
  cursor.take();
  return token.value;
}

function readRange(cursor: Cursor): Clauses {
  const from = readOperand(cursor);
  readWord(cursor, 'to');
  return { range: { from, to: readOperand(cursor) } };
}

function readValid(cursor: Cursor): Clauses {
  readWord(cursor, 'when');
  const condition = readExpression(cursor);
  return { valid: { condition, sentence: readQuoted(cursor, 'valid when …') } };
}

function readLines(cursor: Cursor): Clauses {
  for (const word of ['line', 'for', 'each']) readWord(cursor, word);
  return { lines: readName(cursor, 'the name of a list of texts') };
}

/** The second thing that runs: then the chart is a map. */
function readAgainst(cursor: Cursor): Clauses {
  const over = readName(cursor, 'the name of what runs up the map');
  readWord(cursor, 'from');
  const { range } = readRange(cursor);
  return { against: { over, range: range! } };
}

function readAxis(cursor: Cursor): 'x' | 'y' {
  const token = cursor.peek();
  if (token.type !== 'word' || (token.text !== 'x' && token.text !== 'y')) {
    throw unexpected(token, '"x" or "y"');
  }
  cursor.take();
  return token.text;
}

/** Takes one given word. Throws a ReadFault. */
export function readWord(cursor: Cursor, word: string): void {
  const token = cursor.peek();
  if (token.type !== 'word' || token.text !== word) throw unexpected(token, `"${word}"`);
  cursor.take();
}
