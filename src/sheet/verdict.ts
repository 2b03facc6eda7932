import type { Memory } from '../language/memory.ts';
import type { Book } from './book.ts';
import type { Check, Formula } from './cell.ts';
import type { Frame } from './frame.ts';

/** How a value stands to its window. All numbers are SI. */
export type Verdict =
  | {
      readonly verdict: 'pass';
      readonly values: readonly number[];
      readonly least?: number;
      readonly most?: number;
      /** Distance to the nearer limit. */
      readonly margin: number;
      /** Place of the value that stands nearest, from 0. */
      readonly worst: number;
    }
  | {
      readonly verdict: 'fail';
      /** Undefined where texts differ: then there is neither below nor above. */
      readonly side?: 'below' | 'above';
      readonly values: readonly number[];
      readonly least?: number;
      readonly most?: number;
      /** How far outside. */
      readonly margin: number;
      readonly worst: number;
    }
  | {
      readonly verdict: 'unknown';
      readonly values: readonly number[];
      readonly least?: number;
      readonly most?: number;
    };

/** Judges one check on the values as they stand. A list passes when every element does. */
export function verdictOf(book: Book, { memory }: Frame, check: Check): Verdict {
  if (check.equals?.kind.type === 'text') return compareTexts(memory, check);
  const least = limitOf(check.least ?? check.equals, memory);
  const most = limitOf(check.most ?? check.equals, memory);
  const window = {
    ...(least === undefined ? {} : { least }),
    ...(most === undefined ? {} : { most }),
  };
  const values = valuesOf(book, memory, check);
  const lacksLimit =
    (check.least && least === undefined) ||
    (check.most && most === undefined) ||
    (check.equals && least === undefined);
  if (check.problem !== undefined || values.length === 0 || lacksLimit) {
    return { verdict: 'unknown', values, ...window };
  }
  return judge(values, window);
}

function compareTexts(memory: Memory, { subject, equals, problem }: Check): Verdict {
  const found = subject === undefined ? undefined : memory.others[subject];
  const wanted = equals!.code.run(memory);
  if (problem !== undefined || found === undefined || wanted === undefined) {
    return { verdict: 'unknown', values: [] };
  }
  const verdict = found === wanted ? 'pass' : 'fail';
  return { verdict, values: [], margin: 0, worst: 0 };
}

function limitOf(limit: Formula | undefined, memory: Memory): number | undefined {
  const value = limit === undefined ? Number.NaN : (limit.code.run(memory) as number);
  return Number.isFinite(value) ? value : undefined;
}

function valuesOf(book: Book, { numbers, others }: Memory, { subject }: Check): readonly number[] {
  const kind = subject === undefined ? undefined : book.cells[subject]!.kind;
  if (subject === undefined || kind === undefined) return [];
  if (kind.type === 'list') return Array.from((others[subject] as Float64Array | undefined) ?? []);
  return Number.isNaN(numbers[subject]) ? [] : [numbers[subject]!];
}

/** What it means that a value fails its check, in the words of the sheet. */
export function meaningOf({ statement }: Check, verdict: Verdict): string | undefined {
  if (verdict.verdict !== 'fail' || isShut(verdict)) return undefined;
  const { below, above } = statement;
  return verdict.side === undefined ? (below ?? above) : statement[verdict.side];
}

/** Whether limits that are worked out have passed each other, so that nothing lies between them. */
export function isShut<T extends Window>(window: T): window is T & Required<Window> {
  const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY } = window;
  return least > most;
}

interface Window {
  readonly least?: number;
  readonly most?: number;
}

/** Rounding in binary must not fail a value that stands on its limit: a hair of 1e-12 is allowed. */
function judge(values: readonly number[], window: Window): Verdict {
  const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY } = window;
  const slack = 1e-12 * Math.max(...[least, most].filter(Number.isFinite).map(Math.abs));
  const margins = values.map((value) => Math.min(value - least, most - value));
  const margin = Math.min(...margins);
  const worst = margins.indexOf(margin);
  const base = { values, worst, ...window };
  if (margin >= -slack) return { verdict: 'pass', margin: Math.max(0, margin), ...base };
  const side = values[worst]! < least ? 'below' : 'above';
  return { verdict: 'fail', side, margin: -margin, ...base };
}
