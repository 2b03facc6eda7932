import { quote, skipBlanks, wordAt } from './characters.ts';
import { unknownUnit } from './nearest-units.ts';
import { scanUnit, type UnitScan } from './parse-unit.ts';
import { isFailure, type ScanFailure } from './scan-failure.ts';
import { scanFraction, scanFractionBehind } from './scan-fraction.ts';
import { malformed, scanNumber } from './scan-number.ts';
import type { Unit } from './unit.ts';
import type { ReadingMode } from './unit-index.ts';
import { parseVulgarFraction } from './vulgar-fraction.ts';

/** One number with its fraction and unit, in that unit: `3 1/8 in`. */
export interface Measure {
  readonly amount: number;
  /** As a sheet writes the number: `3 1/8`. */
  readonly digits: string;
  readonly unit: Unit | undefined;
  readonly to: number;
}

interface Amount {
  readonly amount: number;
  readonly digits: string;
  readonly to: number;
}

/** The number that starts at `at`, with fraction and unit; undefined where none starts. */
export function scanMeasure(
  text: string,
  at: number,
  mode: ReadingMode,
): Measure | ScanFailure | undefined {
  const amount = scanAmount(text, at, mode);
  if (amount === undefined || isFailure(amount)) return amount;
  const unit = scanUnitBehind(text, amount.to, mode);
  if (isFailure(unit)) return unit;
  return { ...amount, unit: unit?.unit, to: unit?.to ?? amount.to };
}

function scanAmount(text: string, at: number, mode: ReadingMode): Amount | ScanFailure | undefined {
  if (parseVulgarFraction(text[at]) !== undefined) return toAmount(scanFraction(text, at));
  const number = scanNumber(text, at, mode);
  if (number === undefined || isFailure(number)) return number;
  const plain = { amount: number.value, digits: number.digits, to: number.to };
  if (!number.whole) return refuseFraction(text, at, number.to) ?? plain;
  const fraction = scanFractionBehind(text, at, number.to, mode);
  if (isFailure(fraction)) return fraction;
  if (fraction === undefined) return scanLoneFraction(text, at, mode) ?? plain;
  const amount = number.value + fraction.value;
  return { amount, digits: `${number.digits} ${fraction.digits}`, to: fraction.to };
}

function toAmount(fraction: ReturnType<typeof scanFraction>): Amount | ScanFailure | undefined {
  if (fraction === undefined || isFailure(fraction)) return fraction;
  return { amount: fraction.value, digits: fraction.digits, to: fraction.to };
}

/** `1/8 in` is one number; `1/8` without a unit is left to be a division. */
function scanLoneFraction(
  text: string,
  at: number,
  mode: ReadingMode,
): Amount | ScanFailure | undefined {
  const fraction = scanFraction(text, at);
  if (fraction === undefined) return undefined;
  const unit = scanUnit(text, skipBlanks(text, fraction.to), mode);
  return unit === undefined ? undefined : toAmount(fraction);
}

function refuseFraction(text: string, at: number, to: number): ScanFailure | undefined {
  if (parseVulgarFraction(text[to]) === undefined) return undefined;
  const message = `${quote(text.slice(at, to + 1))} mixes decimals and a fraction: write one or the other`;
  return malformed(message, at, to + 1);
}

/** A unit glued on or behind blanks. A glued word that is no unit is a fault; one behind blanks is left alone. */
function scanUnitBehind(
  text: string,
  at: number,
  mode: ReadingMode,
): UnitScan | ScanFailure | undefined {
  const scan = scanUnit(text, skipBlanks(text, at), mode);
  if (scan !== undefined) return scan;
  const sign = /[°%]/.test(text[at] ?? '') ? text[at]! : '';
  const word = sign + wordAt(text, at + sign.length);
  return word === '' ? undefined : refuseUnit(word, at);
}

function refuseUnit(word: string, from: number): ScanFailure {
  return { failure: 'unknown-unit', message: unknownUnit(word), from, to: from + word.length };
}
