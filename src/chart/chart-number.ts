import type { Axis } from '../sheet/chart-data.ts';
import { formatNumber, stripZeros } from '../units/format-number.ts';
import { joinUnit } from '../units/format-quantity.ts';
import { formatUnit } from '../units/format-unit.ts';

/** A step to read an axis of this length by: a thousandth of it or a little less, at most 1. */
export function resolutionOf({ from, to }: Pick<Axis, 'from' | 'to'>): number {
  const span = Math.abs(to - from) || Math.abs(to) || 1;
  const power = Math.min(0, Math.floor(Math.log10(span)) - 3);
  // Not a power worked out: 10 ** -4 is not 0.0001.
  return Number(`1e${power}`);
}

/** A number to the nearest step, without noughts at the end; empty where there is none. */
export function formatTo(value: number, resolution: number): string {
  if (!Number.isFinite(value)) return '';
  // Rounded beforehand: what is less than half a step is noise here and is nought. And so are the
  // last bits: 1.1875 in comes out of metres a hair too small, and is 1.188 in a result.
  const rounded = Math.round(Number((value / resolution).toPrecision(12))) * resolution;
  return stripZeros(formatNumber(rounded, { resolution }));
}

/** A value of an axis with its unit: `2463 rpm`. */
export function formatOn(axis: Axis, value: number): string {
  const number = formatTo(value, resolutionOf(axis));
  return number === '' || axis.unit === '' ? number : joinUnit(number, { symbol: axis.unit });
}

/** `Road speed, mph`. */
export function formatAxisLabel({ label, unit }: Pick<Axis, 'label' | 'unit'>): string {
  return [label, formatUnit({ symbol: unit })].filter((part) => part !== '').join(', ');
}
