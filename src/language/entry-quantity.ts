import { quote } from '../units/characters.ts';
import { type Dimension, equalDimensions, nameDimension } from '../units/dimension.ts';
import type { Unit } from '../units/unit.ts';
import { type EntryNumber, isProblem, readNumber } from './entry-number.ts';
import { maybeSharedUnit, resolveSeries, type Series, splitSeries } from './entry-series.ts';
import { splitTolerance, type ToleranceSplit } from './entry-tolerance.ts';
import { fail, type Problem, type Span } from './problem.ts';

/** How far the true value may lie below and above, in SI. */
export interface Tolerance {
  readonly minus: number;
  readonly plus: number;
}

/** A typed quantity as understood. */
export interface QuantityEntry {
  /** In SI; the mean of repeated readings. */
  readonly value: number;
  readonly dimension: Dimension;
  /** The unit that it was typed in, else the field's; undefined for a mixture. */
  readonly unit: Unit | undefined;
  readonly explicit: boolean;
  readonly tolerance?: Tolerance;
  /** In SI, where there is more than one. */
  readonly readings?: readonly number[];
}

/** Reads one quantity: a number, arithmetic, or repeated readings, with a tolerance behind where there is one. */
export function readQuantity(entry: string, field: Unit | undefined): QuantityEntry | Problem {
  const split = splitTolerance(entry);
  if (split === undefined) return readReadings(entry, { from: 0, to: entry.length }, field);
  return isProblem(split) ? split : readWithTolerance(entry, split, field);
}

function readReadings(entry: string, span: Span, field: Unit | undefined): QuantityEntry | Problem {
  const numbers = readNumbers(entry, splitSeries(entry, span));
  if (isProblem(numbers)) return numbers;
  const series = resolveSeries(entry, numbers, field);
  return isProblem(series) ? series : toQuantity(series, span);
}

/** Each piece as a number; the first problem stops. */
export function readNumbers(
  entry: string,
  pieces: readonly Span[],
): readonly EntryNumber[] | Problem {
  const numbers: EntryNumber[] = [];
  for (const piece of pieces) {
    if (entry.slice(piece.from, piece.to).trim() === '') {
      const message = 'a number is missing beside a comma or ;';
      return fail('unreadable-entry', piece, { message });
    }
    const number = readNumber(entry, piece);
    if (isProblem(number)) return number;
    numbers.push(number);
  }
  return numbers;
}

function toQuantity(series: Series, span: Span): QuantityEntry | Problem {
  const { values, dimension, unit, explicit } = series;
  const value = values.reduce((sum, reading) => sum + reading, 0) / values.length;
  if (!Number.isFinite(value)) return fail('overflow', span, undefined);
  const plain = { value, dimension, unit, explicit };
  return values.length === 1 ? plain : { ...plain, readings: values };
}

function readWithTolerance(
  entry: string,
  split: ToleranceSplit,
  field: Unit | undefined,
): QuantityEntry | Problem {
  const sides = readNumbers(
    entry,
    split.minus === split.plus ? [split.plus] : [split.minus, split.plus],
  );
  if (isProblem(sides)) return sides;
  const shared = maybeSharedUnit(sides);
  const nominal = readReadings(entry, split.nominal, field);
  if (isProblem(nominal)) return nominal;
  if (nominal.explicit || shared === undefined || isPercentOf(shared, field)) {
    return addTolerance(entry, nominal, sides);
  }
  if (shared.symbol === 'thou' && field?.symbol !== 'thou') return refuseThou(entry, split.nominal);
  const served = readReadings(entry, split.nominal, shared);
  return isProblem(served) ? served : addTolerance(entry, { ...served, explicit: true }, sides);
}

/** A tolerance in % is a share of the reading, unless the reading is itself in %. */
function isPercentOf(tolerance: Unit, reading: Unit | undefined): boolean {
  return tolerance.symbol === '%' && reading?.symbol !== '%';
}

/** In `3.212 ± 3 thou` the reading is likely in inches, in `25 ± 3 thou` in thousandths. */
function refuseThou(entry: string, span: Span): Problem {
  const reading = quote(entry.slice(span.from, span.to).trim());
  const message = `is ${reading} in inches or in thou? write its unit too, as in 3.212 in ± 3 thou`;
  return fail('mixed-units', span, { message });
}

function addTolerance(
  entry: string,
  nominal: QuantityEntry,
  sides: readonly EntryNumber[],
): QuantityEntry | Problem {
  const bare = maybeSharedUnit(sides) ?? nominal.unit;
  const found = sides.map((side) => toSpread(entry, side, nominal, bare));
  for (const spread of found) if (typeof spread !== 'number') return spread;
  const [minus, plus = minus] = found as number[];
  return { ...nominal, tolerance: { minus: minus!, plus: plus! } };
}

function toSpread(
  entry: string,
  side: EntryNumber,
  nominal: QuantityEntry,
  serving: Unit | undefined,
): number | Problem {
  const typed = quote(entry.slice(side.from, side.to));
  const unit = side.units.length > 0 ? maybeSharedUnit([side]) : serving;
  const isShare = unit !== undefined && isPercentOf(unit, nominal.unit);
  const isScaled = side.units.length > 0 || serving === undefined;
  const size = isScaled ? side.value : side.value * serving.factor;
  const dimension = isScaled ? side.dimension : serving.dimension;
  if (size < 0) {
    return fail('bad-tolerance', side, { message: `a tolerance is not negative: ${typed}` });
  }
  const spread = isShare ? size * Math.abs(nominal.value) : size;
  if (!Number.isFinite(spread)) return fail('overflow', side, undefined);
  if (isShare || equalDimensions(dimension, nominal.dimension)) return spread;
  const message = `a tolerance of ${typed} (${nameDimension(dimension)}) does not fit a reading that is ${nameDimension(nominal.dimension)}; give it a unit of the same kind, or %`;
  return fail('bad-tolerance', side, { message });
}
