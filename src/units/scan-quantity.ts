import { isBlank, quote, skipBlanks } from './characters.ts';
import { type Dimension, NONE } from './dimension.ts';
import { isFailure, type ScanFailure } from './scan-failure.ts';
import { type Measure, scanMeasure } from './scan-measure.ts';
import { malformed } from './scan-number.ts';
import type { Unit } from './unit.ts';
import { findUnit, type ReadingMode } from './unit-index.ts';

/** A number with its unit as found in a text. */
export interface QuantityScan {
  /** In SI. */
  readonly value: number;
  readonly dimension: Dimension;
  readonly unit: Unit | undefined;
  /**
   * The number in that unit as a sheet writes it, so that digits, blank and unit read back as the
   * same quantity: `3 1/8` for `3-1/8"`, `12.5` for `12,5`, `67.25` (inches) for `5' 7 1/4"`.
   */
  readonly digits: string;
  readonly from: number;
  readonly to: number;
}

/**
 * The number that starts at `at`, without a sign, with its unit where one follows. Undefined where
 * no number starts. Both modes read `3`, `3.2`, `.025`, `1e9`, `3 1/8`, `1/8 in`, `3⅛` and units
 * glued on or behind blanks; an entry also `3-1/8"`, `5' 7 1/4"` and decimal commas.
 */
export function scanQuantity(
  text: string,
  at: number,
  mode: ReadingMode,
): QuantityScan | ScanFailure | undefined {
  const measure = scanMeasure(text, at, mode);
  if (measure === undefined || isFailure(measure)) return measure;
  const isFeet = mode === 'entry' && measure.unit === FOOT;
  const whole = isFeet ? addInches(text, at, measure) : measure;
  return isFailure(whole) ? whole : toQuantity(text, at, whole);
}

const FOOT = findUnit('ft')!;
const INCH = findUnit('in')!;

function addInches(text: string, from: number, feet: Measure): Measure | ScanFailure {
  const hyphened = text[feet.to] === '-' && !isLetter(text[feet.to - 1]);
  const at = hyphened ? feet.to + 1 : skipBlanks(text, feet.to);
  const inches = scanMeasure(text, at, 'entry');
  if (inches === undefined || isFailure(inches)) return inches ?? feet;
  if (inches.unit !== INCH) return hyphened ? feet : refuseInches(text, from, inches.to);
  const amount = Number((feet.amount * 12 + inches.amount).toPrecision(15));
  return { amount, digits: String(amount), unit: INCH, to: inches.to };
}

/** `5'-7"` is how drawings write it; `5 ft-7 in` subtracts. */
function isLetter(character: string | undefined): boolean {
  return character !== undefined && !isBlank(character) && /\p{L}/u.test(character);
}

function refuseInches(text: string, from: number, to: number): ScanFailure {
  const found = quote(text.slice(from, to));
  return malformed(`${found} lacks an inch mark: write 5' 7" or 5 ft 7 in`, from, to);
}

function toQuantity(text: string, from: number, measure: Measure): QuantityScan | ScanFailure {
  const { amount, digits, unit, to } = measure;
  const value = unit === undefined ? amount : amount * unit.factor;
  if (!Number.isFinite(value) || (value === 0 && amount !== 0)) {
    const size = value === 0 ? 'small' : 'large';
    return malformed(`${quote(text.slice(from, to))} is too ${size} to work with`, from, to);
  }
  return { value, dimension: unit?.dimension ?? NONE, unit, digits, from, to };
}
