import { quote } from '../units/characters.ts';
import { equalDimensions, NONE, nameDimension } from '../units/dimension.ts';
import type { Unit } from '../units/unit.ts';
import type { EntryNumber } from './entry-number.ts';
import { fail, type Problem, type Span } from './problem.ts';

/** Several numbers of one entry brought to SI: repeated readings, or the elements of a list. */
export interface Series {
  readonly values: readonly number[];
  readonly dimension: Unit['dimension'];
  /** The unit that all were typed in, where it was one and is still that of the values. */
  readonly unit: Unit | undefined;
  readonly explicit: boolean;
}

/**
 * Cuts a stretch of an entry at `;`, or where there is none at each comma before a blank.
 * A comma inside brackets, and one between digits, does not cut.
 */
export function splitSeries(entry: string, span: Span): readonly Span[] {
  const semicolons = cut(entry, span, (at) => entry[at] === ';');
  if (semicolons.length > 1) return semicolons;
  return cut(entry, span, (at) => entry[at] === ',' && isOpen(entry, at + 1, span.to));
}

function isOpen(entry: string, at: number, end: number): boolean {
  return at >= end || /\s/.test(entry[at]!);
}

/** Pieces of a stretch between the offsets outside round brackets that `isCut` tells. */
export function cut(
  entry: string,
  { from, to }: Span,
  isCut: (at: number) => boolean,
): readonly Span[] {
  const pieces: Span[] = [];
  let depth = 0;
  let start = from;
  for (let at = from; at < to; at += 1) {
    if (entry[at] === '(') depth += 1;
    if (entry[at] === ')') depth -= 1;
    if (depth !== 0 || !isCut(at)) continue;
    pieces.push({ from: start, to: at });
    start = at + 1;
  }
  return [...pieces, { from: start, to }];
}

/** The unit that all numbers with units share, or undefined. */
export function maybeSharedUnit(numbers: readonly EntryNumber[]): Unit | undefined {
  const units = new Map(numbers.flatMap((n) => n.units).map((unit) => [unit.symbol, unit]));
  const [unit] = units.values();
  return units.size === 1 ? unit : undefined;
}

/**
 * Brings numbers to SI. Bare ones take the unit behind the last of them; where none has a unit,
 * `field`.
 */
export function resolveSeries(
  entry: string,
  numbers: readonly EntryNumber[],
  field: Unit | undefined,
): Series | Problem {
  const last = numbers.at(-1);
  const explicit = numbers.some((number) => number.units.length > 0);
  const serving = explicit ? maybeSharedUnit(last === undefined ? [] : [last]) : field;
  const lacking = explicit && numbers.find((number) => number.units.length === 0);
  if (lacking && serving === undefined) return refuseBare(entry, lacking);
  const scaled = numbers.map((number) => scale(number, serving));
  const dimension = scaled[0]?.dimension ?? field?.dimension ?? NONE;
  const stray = scaled.find((number) => !equalDimensions(number.dimension, dimension));
  if (stray !== undefined) return refuseStray(entry, scaled[0]!, stray);
  const endless = scaled.find((number) => !Number.isFinite(number.value));
  if (endless !== undefined) return fail('overflow', endless, undefined);
  // Inches over inches are no inches.
  const unit = [explicit ? maybeSharedUnit(numbers) : field].find(
    (one) => one !== undefined && equalDimensions(one.dimension, dimension),
  );
  return { values: scaled.map(({ value }) => value), dimension, unit, explicit };
}

function scale(number: EntryNumber, serving: Unit | undefined): EntryNumber {
  if (number.units.length > 0 || serving === undefined) return number;
  const { factor, dimension } = serving;
  return { ...number, value: number.value * factor, dimension };
}

function refuseBare(entry: string, bare: EntryNumber): Problem {
  const found = quote(entry.slice(bare.from, bare.to));
  const message = `${found} has no unit, but others have; write one behind the last number for all, or one behind each`;
  return fail('mixed-units', bare, { message });
}

function refuseStray(entry: string, first: EntryNumber, stray: EntryNumber): Problem {
  const [a, b] = [first, stray].map(
    (number) =>
      `${quote(entry.slice(number.from, number.to))} (${nameDimension(number.dimension)})`,
  );
  const message = `${a} and ${b} cannot stand together; give them units of one kind`;
  return fail('mixed-units', stray, { message });
}
