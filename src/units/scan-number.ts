import { isDigit, quote, skipDigits } from './characters.ts';
import type { ScanFailure } from './scan-failure.ts';
import type { ReadingMode } from './unit-index.ts';

/** A plain number, no unit and no fraction. */
export interface NumberScan {
  readonly value: number;
  /** Digits with a decimal point and without groups, as a sheet writes it: `1234.5`. */
  readonly digits: string;
  /** True where there is neither decimal sign nor exponent, so that a fraction may follow. */
  readonly whole: boolean;
  readonly to: number;
}

/**
 * The decimal number that starts at `at`: `3`, `3.2`, `.025`, `1e9`, digits in threes with thin or
 * no-break spaces. An entry may have a decimal comma (`12,5`) or commas between threes where that
 * is the only way to read them (`1,234.5`); `1,234` is refused with both readings.
 */
export function scanNumber(
  text: string,
  at: number,
  mode: ReadingMode,
): NumberScan | ScanFailure | undefined {
  if (!isDigit(text[at]) && !(text[at] === '.' && isDigit(text[at + 1]))) return undefined;
  return (mode === 'entry' && scanCommas(text, at)) || scanPointed(text, at);
}

/** Groups of three behind up to three digits, then nothing that would make it a fraction. */
const SPACED = /\d{1,3}(?:[\u00A0\u2009\u202F]\d{3})+(?![\d/])/y;
const EXPONENT = /[eE][+\-−]?\d+(?![\p{L}\d_])/uy;

function scanPointed(text: string, at: number): NumberScan | ScanFailure {
  SPACED.lastIndex = at;
  const spaced = SPACED.exec(text)?.[0];
  const wholeTo = spaced === undefined ? skipDigits(text, at) : at + spaced.length;
  const pointTo = text[wholeTo] === '.' ? skipDigits(text, wholeTo + 1) : wholeTo;
  EXPONENT.lastIndex = pointTo;
  const to = pointTo + (EXPONENT.exec(text)?.[0].length ?? 0);
  if (text[to] === '.') return refuseSecondPoint(text, at);
  const digits = text.slice(at, to).replace(/[\u00A0\u2009\u202F]/g, '');
  return toNumber(digits, wholeTo === to, at, to);
}

function toNumber(
  digits: string,
  whole: boolean,
  from: number,
  to: number,
): NumberScan | ScanFailure {
  const value = Number(digits.replace('−', '-'));
  if (!Number.isFinite(value)) return malformed(`${quote(digits)} is too large a number`, from, to);
  if (value === 0 && /^[\d.]*[1-9]/.test(digits)) {
    return malformed(`${quote(digits)} is too small a number`, from, to);
  }
  return { value, digits, whole, to };
}

/** Digits with points and commas. Bounded, so that a long list is not read anew at each of its numbers. */
const COMMAS = /\d[\d.]*(?:,\d[\d.]*){1,30}/y;

/** Undefined where the text has no comma between digits, or where the comma separates two numbers. */
function scanCommas(text: string, at: number): NumberScan | ScanFailure | undefined {
  COMMAS.lastIndex = at;
  const found = COMMAS.exec(text)?.[0];
  if (found === undefined) return undefined;
  const to = at + found.length;
  if (text[to] === ',' && isDigit(text[to + 1])) return refuseCommas(found, at, to);
  if (/^\d{1,3},\d{3}$/.test(found) && !found.startsWith('0')) return refuseTwoWays(found, at, to);
  if (/^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d*)?$/.test(found)) {
    return toNumber(found.replaceAll(',', ''), !found.includes('.'), at, to);
  }
  if (/^\d+,\d+$/.test(found)) return scanExponentOf(text, found.replace(',', '.'), at, to);
  if (/^\d+\.\d*,/.test(found) && !/^[1-9]\d{0,2}(?:\.\d{3})+,/.test(found)) return undefined;
  return refuseCommas(found, at, to);
}

function scanExponentOf(text: string, digits: string, at: number, to: number) {
  EXPONENT.lastIndex = to;
  const exponent = EXPONENT.exec(text)?.[0] ?? '';
  return toNumber(digits + exponent, false, at, to + exponent.length);
}

function refuseTwoWays(found: string, from: number, to: number): ScanFailure {
  const ways = `as ${found.replace(',', '')} or as ${found.replace(',', '.')}`;
  const message = `${found} can be read ${ways}: write the one that is meant`;
  return { failure: 'ambiguous-number', message, from, to };
}

function refuseCommas(found: string, from: number, to: number): ScanFailure {
  const message = `cannot tell in ${quote(found)} which sign is the decimal one: write decimals with a point, and a blank behind a comma that separates numbers`;
  return { failure: 'ambiguous-number', message, from, to };
}

function refuseSecondPoint(text: string, from: number): ScanFailure {
  let to = from;
  while (isDigit(text[to]) || text[to] === '.') to += 1;
  return malformed(`${quote(text.slice(from, to))} has more than one decimal point`, from, to);
}

export function malformed(message: string, from: number, to: number): ScanFailure {
  return { failure: 'malformed-number', message, from, to };
}
