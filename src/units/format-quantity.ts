import { type Digits, formatNumber } from './format-number.ts';
import { formatUnit } from './format-unit.ts';
import type { Unit } from './unit.ts';

const NO_BREAK = '\u00A0';

/** An SI value in a unit, as the page shows it: `3 1/8 in`, `5 280 ft`, `3.5°`. */
export function formatQuantity(value: number, unit: Unit | undefined, digits: Digits = {}): string {
  return joinUnit(formatAmount(value, unit, digits), unit);
}

/** The number alone of an SI value in a unit. */
export function formatAmount(value: number, unit: Unit | undefined, digits: Digits = {}): string {
  return formatNumber(unit === undefined ? value : value / unit.factor, digits);
}

/** A number's text with its unit behind it, so that no line breaks between them. */
export function joinUnit(number: string, unit: Pick<Unit, 'symbol'> | undefined): string {
  if (unit === undefined) return number;
  const shown = formatUnit(unit);
  return /^[°'"]/.test(shown) ? number + shown : number + NO_BREAK + shown;
}
