import { isDigit, quote, skipBlanks } from './characters.ts';
import type { ScanFailure } from './scan-failure.ts';
import { malformed } from './scan-number.ts';
import type { ReadingMode } from './unit-index.ts';
import { parseVulgarFraction } from './vulgar-fraction.ts';

/** A proper or improper fraction as written, `1/8` or `⅛`. */
export interface FractionScan {
  readonly value: number;
  /** With a slash: `1/8`. */
  readonly digits: string;
  readonly to: number;
}

/** What follows the denominator must not make it another number: `1/8.5`. */
const FRACTION = /(\d+)[/⁄](\d+)(?!\d|[.,]\d)/y;

/** The fraction without blanks that starts at `at`; its denominator may not be 0. */
export function scanFraction(text: string, at: number): FractionScan | ScanFailure | undefined {
  const sign = parseVulgarFraction(text[at]);
  if (sign !== undefined) return scanVulgar(text, at, sign);
  FRACTION.lastIndex = at;
  const found = FRACTION.exec(text);
  if (!found) return undefined;
  const [digits, above, below] = [found[0].replace('⁄', '/'), Number(found[1]), Number(found[2])];
  const to = at + digits.length;
  if (below === 0) return malformed(`${quote(digits)} divides by zero`, at, to);
  const value = above / below;
  if (Number.isFinite(value)) return { value, digits, to };
  return malformed(`${quote(digits)} has too many digits`, at, to);
}

function scanVulgar(text: string, at: number, digits: string): FractionScan | ScanFailure {
  const to = at + 1;
  const [above, below] = digits.split('/').map(Number);
  if (!isDigit(text[to]) && parseVulgarFraction(text[to]) === undefined) {
    return { value: above! / below!, digits, to };
  }
  const stuck = text.slice(at, to + 1);
  return malformed(`${stuck} is no number: a fraction stands last, as in 3 ${digits}`, at, to + 1);
}

/**
 * The fraction that belongs to the whole number from `start` to `at`: behind blanks (`3 1/8`),
 * glued on where it is one sign (`3⅛`), in an entry also behind a tight hyphen (`3-1/8`), which is
 * how drawings write it; `3 - 1/8` with blanks subtracts. In an entry none belongs to a number that
 * a slash is glued to: `3/8-1/16` takes one fraction from another.
 */
export function scanFractionBehind(
  text: string,
  start: number,
  at: number,
  mode: ReadingMode,
): FractionScan | ScanFailure | undefined {
  if (mode === 'entry' && /[/÷]/.test(text[start - 1] ?? '')) return undefined;
  if (mode === 'entry' && (text[at] === '-' || text[at] === '\u2011')) {
    return scanHyphened(text, start, at);
  }
  const from = skipBlanks(text, at);
  if (from === at && parseVulgarFraction(text[at]) === undefined) return undefined;
  const fraction = scanFraction(text, from);
  if (!fraction || !('value' in fraction) || fraction.value < 1) return fraction;
  const message = `${quote(fraction.digits)} behind a whole number must be less than 1, as in 3 1/8`;
  return malformed(message, from, fraction.to);
}

/** `5+3-1/8` is 8 1/8 to one reader and 7 7/8 to another. */
function scanHyphened(
  text: string,
  start: number,
  at: number,
): FractionScan | ScanFailure | undefined {
  const hyphened = scanFraction(text, at + 1);
  if (!hyphened || !('value' in hyphened)) return hyphened;
  if (hyphened.value >= 1) return undefined;
  if (!/[\p{L}\p{N})"″%°]\s*[-+−*×·]$/u.test(text.slice(0, start))) return hyphened;
  const whole = text.slice(start, at);
  const message = `${whole}-${hyphened.digits} can be read as ${whole} ${hyphened.digits} or as ${whole} less ${hyphened.digits}: put a blank before the fraction, or blanks around the minus`;
  return { failure: 'ambiguous-number', message, from: start, to: hyphened.to };
}
