import type { MapData } from '../sheet/map-data.ts';
import { formatAxisLabel, formatTo, resolutionOf } from './chart-number.ts';

/** A map as a table to read: the first axis across, the second down. */
export interface MapTable {
  /** What the cells hold. */
  readonly title: string;
  /** Head of the column of y, then the places on x. */
  readonly header: readonly string[];
  /** Each begins with its place on y; the highest first, as on the map. */
  readonly rows: readonly (readonly string[])[];
}

const MISSING = 'no value';

/** About `count` places each way. */
export function mapRows(data: MapData, count = 6): MapTable {
  const { x, y, z, xs, ys, values } = data;
  const columns = spread(xs.length, count);
  const rows = [...spread(ys.length, count)].reverse();
  const show = (value: number) => formatTo(value, resolutionOf(z)) || MISSING;
  return {
    title: `${formatAxisLabel(z)}, over ${formatAxisLabel(x)}`,
    header: [formatAxisLabel(y), ...columns.map((i) => formatTo(xs[i]!, resolutionOf(x)))],
    rows: rows.map((j) => [
      formatTo(ys[j]!, resolutionOf(y)),
      ...columns.map((i) => show(values[j * xs.length + i]!)),
    ]),
  };
}

/** Indices evenly over a length, both ends among them. */
function spread(length: number, count: number): readonly number[] {
  const steps = Math.max(1, Math.min(count, length) - 1);
  return Array.from({ length: steps + 1 }, (_, i) => Math.round(((length - 1) * i) / steps));
}
