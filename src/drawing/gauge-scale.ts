import { type GaugeData, isKnown } from './gauge-data.ts';

/** The stretch of numbers that a gauge shows. */
export interface GaugeScale {
  readonly from: number;
  readonly to: number;
}

/** How far a gauge with two limits reaches past each, as a share of the window. */
const MARGIN = 0.7;

/**
 * The scale of a gauge. With two limits it hangs on the window alone, so that a pointer can be read
 * by its place; with one it reaches to the values, within reason. What lies beyond is off the scale.
 */
export function createGaugeScale(data: GaugeData): GaugeScale {
  const limits = [data.least, data.most].flatMap((limit) =>
    limit !== undefined && Number.isFinite(limit.value) ? [limit.value] : [],
  );
  const known = data.values.filter(isKnown).map((value) => value.value);
  if (limits.length === 0) return spanAround(known);
  const [low, high] = [Math.min(...limits), Math.max(...limits)];
  if (high > low) return widen(low, high, (high - low) * MARGIN);
  return widen(low, high, reachFrom(low, known));
}

function widen(low: number, high: number, by: number): GaugeScale {
  return { from: low - by, to: high + by };
}

function reachFrom(limit: number, values: readonly number[]): number {
  const furthest = Math.max(0, ...values.map((value) => Math.abs(value - limit))) * 1.3;
  const natural = Math.abs(limit) / 2 || furthest || 1;
  return Math.min(Math.max(furthest, natural / 2), natural * 3);
}

function spanAround(values: readonly number[]): GaugeScale {
  if (values.length === 0) return { from: 0, to: 1 };
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return widen(low, high, (high - low) / 4 || Math.abs(low) / 2 || 1);
}

export interface ScalePlace {
  readonly x: number;
  /** Where the value itself lies past the end of the scale. */
  readonly off?: 'left' | 'right';
}

/** Place of a value on a bar from `x` that is `width` px long. */
export function placeOnScale(
  scale: GaugeScale,
  value: number,
  bar: { readonly x: number; readonly width: number },
): ScalePlace {
  if (value < scale.from) return { x: bar.x, off: 'left' };
  if (value > scale.to) return { x: bar.x + bar.width, off: 'right' };
  return { x: bar.x + ((value - scale.from) / (scale.to - scale.from)) * bar.width };
}
