import type { Axis } from '../sheet/chart-data.ts';

/** Narrow no-break space: groups of three without a comma or a point (ISO 80000-1). */
const GROUP = '\u202f';

/** A step fine enough to read an axis of this length by: a thousandth of it or a little less. */
export function resolutionOf({ from, to }: Pick<Axis, 'from' | 'to'>): number {
  const span = Math.abs(to - from) || Math.abs(to) || 1;
  return 10 ** (Math.floor(Math.log10(span)) - 3);
}

/** A number to a step, without noughts at the end; groups of three from five digits on. */
export function formatNumber(value: number, resolution: number): string {
  if (!Number.isFinite(value)) return '';
  const digits = Math.max(0, Math.min(20, -Math.floor(Math.log10(resolution) + 1e-9)));
  const text = Math.abs(value) < 1e15 ? value.toFixed(digits) : value.toPrecision(6);
  const plain = text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
  const signed = plain === '-0' ? '0' : plain.replace('-', '−');
  return signed.replace(/\d{5,}(?=\.|$)/, group).replace(/e\+?(−?\d+)$/, ' × 10^$1');
}

function group(digits: string): string {
  return digits.replace(/\B(?=(\d{3})+$)/g, GROUP);
}

/** A value of an axis with its unit: `2463 rpm`. */
export function formatOn(axis: Axis, value: number): string {
  return withUnit(formatNumber(value, resolutionOf(axis)), axis.unit);
}

export function withUnit(number: string, unit: string): string {
  return unit === '' || number === '' ? number : `${number}\u00a0${unit}`;
}

/** `Road speed, mph`. */
export function formatAxisLabel({ label, unit }: Pick<Axis, 'label' | 'unit'>): string {
  return [label, unit].filter((part) => part !== '').join(', ');
}
