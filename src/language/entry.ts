import { quote } from '../units/characters.ts';
import { type Dimension, equalDimensions, isNone, nameDimension } from '../units/dimension.ts';
import { formatQuantity } from '../units/format-quantity.ts';
import type { Unit } from '../units/unit.ts';
import { UNITS } from '../units/unit-table.ts';
import { type ListEntry, readList } from './entry-list.ts';
import { isProblem, refuseKind } from './entry-number.ts';
import { type QuantityEntry, readQuantity, type Tolerance } from './entry-quantity.ts';
import type { Kind, QuantityList } from './kind.ts';
import { fail, type Problem, type Span } from './problem.ts';

/** What a field takes. */
export interface Expected {
  readonly kind: Kind;
  /** The unit of a number that is typed without one. */
  readonly unit?: Unit;
}

/** What became of a typed text. */
export type EntryReading =
  | {
      readonly state: 'value';
      /** In SI; the mean of repeated readings. */
      readonly value: number | QuantityList | string;
      /** The unit that was understood; left out for plain numbers and mixtures of units. */
      readonly unit?: Unit;
      /** True where the text has a unit of its own. */
      readonly explicit: boolean;
      readonly tolerance?: Tolerance;
      /** In SI, where there was more than one. */
      readonly readings?: readonly number[];
    }
  | { readonly state: 'blank' }
  | { readonly state: 'failed'; readonly problem: Problem };

/** A pasted book is refused before anything looks at it. */
const LONGEST = 1000;

/**
 * Reads what a person typed into a field: any expression without names, in any unit of the
 * field's dimension, with a tolerance, as repeated readings, or as a list. Nothing is dropped: a
 * text is understood whole or refused with a sentence.
 */
export function readEntry(text: string, expected: Expected): EntryReading {
  if (text.trim() === '') return { state: 'blank' };
  const entry = readTyped(text, expected);
  if (isProblem(entry)) return { state: 'failed', problem: entry };
  const problem = typeof entry.value === 'string' ? undefined : findMisfit(text, entry, expected);
  if (problem !== undefined) return { state: 'failed', problem };
  const { value, unit, explicit, tolerance, readings } = entry;
  return {
    state: 'value',
    value,
    explicit,
    ...(unit && { unit }),
    ...(tolerance && { tolerance }),
    ...(readings && { readings }),
  };
}

/** Kind and unit of an entry whose text alone tells them: the default of a given. Undefined for a blank text. */
export function inferEntry(text: string): Expected | Problem | undefined {
  if (text.trim() === '') return undefined;
  const list = isList(text);
  const entry = refuseLong(text) ?? (list ? readList : readQuantity)(text, undefined);
  if (isProblem(entry)) return entry;
  const kind: Kind = { type: list ? 'list' : 'quantity', dimension: entry.dimension };
  return entry.unit === undefined ? { kind } : { kind, unit: entry.unit };
}

interface Typed extends Partial<Omit<QuantityEntry & ListEntry, 'value' | 'explicit'>> {
  readonly value: number | QuantityList | string;
  readonly explicit: boolean;
}

function readTyped(text: string, { kind, unit }: Expected): Typed | Problem {
  const long = refuseLong(text);
  if (long !== undefined) return long;
  switch (kind.type) {
    case 'quantity':
      return isList(text) ? refuseKind('list', wholeOf(text)) : readQuantity(text, unit);
    case 'list':
      return readList(text, unit);
    case 'text':
      return { value: text.trim(), explicit: false };
    default: {
      const message = 'this value is chosen from a table and cannot be typed';
      return fail('unreadable-entry', wholeOf(text), { message });
    }
  }
}

function isList(text: string): boolean {
  return text.trimStart().startsWith('[');
}

function refuseLong(text: string): Problem | undefined {
  if (text.length <= LONGEST) return undefined;
  return fail('entry-too-long', wholeOf(text), { length: text.length, limit: LONGEST });
}

function wholeOf(text: string): Span {
  return { from: 0, to: text.length };
}

function findMisfit(text: string, entry: Typed, { kind, unit }: Expected): Problem | undefined {
  const wanted = (kind as Extract<Kind, { dimension: Dimension }>).dimension;
  const found = entry.dimension!;
  const empty = typeof entry.value === 'object' && entry.value.length === 0;
  if (empty || equalDimensions(found, wanted)) return undefined;
  return fail('entry-dimension', wholeOf(text), {
    typed: quote(text.trim()),
    found: withArticle(nameDimension(found)),
    expected: withArticle(nameDimension(wanted)),
    example: exampleOf(wanted, unit, kind.type === 'list'),
  });
}

function withArticle(noun: string): string {
  return `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;
}

function exampleOf(dimension: Dimension, field: Unit | undefined, list: boolean): string {
  const fits = (one: Unit) => equalDimensions(one.dimension, dimension);
  const unit = field !== undefined && fits(field) ? field : UNITS.find(fits);
  const plain = isNone(dimension) ? undefined : unit;
  const one = formatQuantity(3.2 * (plain?.factor ?? 1), plain);
  return list ? `[${one}]` : one;
}
