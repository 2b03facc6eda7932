import { unitIn } from '../units/counterpart.ts';
import type { System, Unit } from '../units/unit.ts';
import type { LinkedChart } from './cell.ts';
import type { Axis, Series } from './chart-data.ts';
import type { Frame } from './frame.ts';

/* What charts of one given and maps of two have in common. */

export interface AxisUnit {
  readonly symbol: string;
  readonly factor: number;
}

export function axisUnit(unit: Unit | undefined, system: System | undefined): AxisUnit {
  if (unit === undefined) return { symbol: '', factor: 1 };
  return system === undefined ? unit : unitIn(unit, system);
}

export function finiteOr(value: number | undefined, factor: number): number | undefined {
  return value !== undefined && Number.isFinite(value) ? value / factor : undefined;
}

export function extent(series: readonly Series[]): Pick<Axis, 'from' | 'to'> {
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { points } of series) {
    for (const [, y] of points) {
      if (!Number.isFinite(y)) continue;
      if (y < from) from = y;
      if (y > to) to = y;
    }
  }
  if (from > to) return { from: 0, to: 1 };
  // Lines that come near to nothing are judged by their height above it.
  return from > 0 && from < 0.6 * to ? { from: 0, to } : { from, to };
}

export function limitValues({ memory }: Frame, { limits }: LinkedChart, factor: number) {
  return limits.flatMap(({ least, most, label }) => {
    const [low, high] = [least, most].map(
      (formula) => (formula.code.run(memory) as number) / factor,
    );
    return Number.isFinite(low) && Number.isFinite(high)
      ? [{ least: low!, most: high!, label }]
      : [];
  });
}
