import type { Kind, Value } from '../../language/kind.ts';
import { MINUS } from '../../units/format-number.ts';
import { joinUnit } from '../../units/format-quantity.ts';
import { formatUnit } from '../../units/format-unit.ts';
import type { System } from '../../units/unit.ts';
import type { Cell } from '../cell.ts';
import { displayIn, showValue } from '../show.ts';

export const SAME = 'the same';

type Shown = Pick<Cell, 'kind' | 'display'>;

/**
 * How a value differs from another of the same cell, in sign and words: `+320 rpm, 13 % more`. What
 * cannot be told apart at the last digit shown is the same.
 */
export function describeDifference(from: Value, to: Value, cell: Shown, system?: System): string {
  if (typeof from === 'number' && typeof to === 'number') {
    return describeNumber(from, to, cell, system);
  }
  if (from instanceof Float64Array && to instanceof Float64Array) {
    return describeList(from, to, cell, system);
  }
  const [before, after] = [from, to].map((value) => showValue(value, cell.kind!, {}).text);
  return before === after ? SAME : `instead of ${before}`;
}

function describeNumber(from: number, to: number, cell: Shown, system: System | undefined): string {
  const size = sizeOf(to - from, cell, system);
  if (size === undefined) return SAME;
  const sign = to > from ? '+' : MINUS;
  return `${sign}${size}, ${compareSizes(from, to, cell, system)}`;
}

/** `13 % more`; only `more` where the share would say nothing: from zero, over zero, of a share. */
function compareSizes(
  from: number,
  to: number,
  { display }: Shown,
  system: System | undefined,
): string {
  const word = to > from ? 'more' : 'less';
  const share = Math.abs((to - from) / from);
  const isShare = displayIn(display, system).unit?.symbol === '%';
  if (isShare || from <= 0 || to < 0 || share >= 10) return word;
  const percent = share < 0.0995 ? Math.round(1000 * share) / 10 : Math.round(100 * share);
  return percent === 0 ? word : `${percent} % ${word}`;
}

/** Undefined where the difference would be shown as nothing. */
function sizeOf(
  difference: number,
  { kind, display }: Shown,
  system: System | undefined,
): string | undefined {
  const single: Kind = { ...(kind as Extract<Kind, { dimension: unknown }>), type: 'quantity' };
  const shown = displayIn(display, system);
  const step = (shown.resolution ?? 0) * (shown.unit?.factor ?? 1);
  const size = Math.abs(difference);
  if (size < Math.max(step / 2, Number.MIN_VALUE) || size === 0) return undefined;
  return showValue(size, single, display, system).text;
}

/** Element by element where the lists are equally long: `+10, −20 rpm`. */
function describeList(
  from: Float64Array,
  to: Float64Array,
  cell: Shown,
  system: System | undefined,
): string {
  if (from.length !== to.length) return `${to.length} instead of ${from.length}`;
  const single: Kind = {
    ...(cell.kind as Extract<Kind, { dimension: unknown }>),
    type: 'quantity',
  };
  const parts = [...to].map((value, i) => {
    const difference = value - from[i]!;
    if (sizeOf(difference, cell, system) === undefined) return '0';
    const { number } = showValue(Math.abs(difference), single, cell.display, system);
    return `${difference > 0 ? '+' : MINUS}${number}`;
  });
  if (parts.every((part) => part === '0')) return SAME;
  const unit = showValue(0, single, cell.display, system).unit;
  const joined = parts.join(', ');
  return unit === undefined || formatUnit(unit) === '' ? joined : joinUnit(joined, unit);
}
