import { unitIn } from '../units/counterpart.ts';
import { parseUnit } from '../units/parse-unit.ts';
import type { System, Unit } from '../units/unit.ts';

/**
 * The unit that a field takes bare numbers in. An inch becomes a millimetre on a metric page.
 * A metric unit stays on an inch-pound page, and so does every unit that the sheet insists on with
 * `as`: a tyre is as many millimetres wide, and a rim as many inches across, wherever it is measured.
 */
export function fieldUnitOf(
  declared: Unit | undefined,
  insisted: Unit | undefined,
  system: System,
): Unit | undefined {
  if (insisted !== undefined) return insisted;
  return declared === undefined || system === 'inch-pound' ? declared : unitIn(declared, system);
}

/** What a field shows for an entry: as typed, and with its unit where that is not the field's. */
export function formatEntry(
  entry: { readonly text: string; readonly unit?: string | undefined },
  explicit: boolean,
  unit: Unit | undefined,
): string {
  const bareUnit = entry.unit ?? '';
  if (explicit || bareUnit === '' || bareUnit === (unit?.symbol ?? '')) return entry.text;
  return entry.text.trim() === '' ? entry.text : `${entry.text} ${bareUnit}`;
}

/** An entry without the unit at its end where that is the field's own, which stands behind the field. */
export function withoutUnit(text: string, unit: Unit | undefined): string {
  const match = /^([^\p{L}"'°%]*[\d\])⅛¼⅜½⅝¾⅞])\s*(\S+)$/u.exec(text);
  if (match === null || unit === undefined) return text;
  return parseUnit(match[2]!)?.symbol === unit.symbol ? match[1]! : text;
}
