import { MINUS, stripZeros } from '../units/format-number.ts';
import { formatAmount, joinUnit } from '../units/format-quantity.ts';
import type { Unit } from '../units/unit.ts';
import type { EntryReading } from './entry.ts';
import type { Tolerance } from './entry-quantity.ts';

/** More than anyone types of a length, few enough to hide the noise of binary arithmetic. */
const FIGURES = 7;

/**
 * What was understood, for the line under a field: `3.125 in`, `3.212 ± 0.003 in`,
 * `mean of 3: 3.2123 in`, `[0.01, 0.015] in`; with the field's own unit behind where another was
 * typed: `80.6 mm = 3.173228 in`. Without `mean of` and `=` it can be typed in again.
 *
 * @param field the field's unit
 */
export function formatEcho(
  { value, unit = undefined, explicit, tolerance, readings }: EntryValue,
  field: Unit | undefined,
): string {
  if (typeof value === 'string') return value;
  const typed = formatTyped(value, unit ?? field, tolerance);
  const mean = readings === undefined ? '' : `mean of ${readings.length}: `;
  const isForeign = explicit && unit !== undefined && field !== undefined && !isSame(unit, field);
  return `${mean}${typed}${isForeign ? ` = ${formatTyped(value, field, tolerance)}` : ''}`;
}

type EntryValue = Extract<EntryReading, { state: 'value' }>;

function isSame(a: Unit, b: Unit): boolean {
  return a.symbol === b.symbol;
}

function formatTyped(
  value: number | Float64Array,
  unit: Unit | undefined,
  tolerance: Tolerance | undefined,
): string {
  if (typeof value === 'number') {
    return joinUnit(formatPlain(value, unit) + formatTolerance(tolerance, unit), unit);
  }
  const items = Array.from(value, (item) => formatPlain(item, unit));
  return joinUnit(`[${items.join(', ')}]`, unit);
}

function formatTolerance(tolerance: Tolerance | undefined, unit: Unit | undefined): string {
  if (tolerance === undefined) return '';
  const [minus, plus] = [formatPlain(tolerance.minus, unit), formatPlain(tolerance.plus, unit)];
  return minus === plus ? ` ± ${plus}` : ` +${plus}/${MINUS}${minus}`;
}

function formatPlain(value: number, unit: Unit | undefined): string {
  return stripZeros(formatAmount(value, unit, { figures: FIGURES }));
}
