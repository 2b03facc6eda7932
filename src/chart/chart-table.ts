import type { ChartData } from '../sheet/chart-data.ts';
import { formatAxisLabel, formatTo, resolutionOf } from './chart-number.ts';
import { valueAt } from './line-crossings.ts';

/** A chart as a table to read: a column for x and one for each line. */
export interface ChartTable {
  /** Column heads, units included. */
  readonly header: readonly string[];
  readonly rows: readonly ChartRow[];
}

export interface ChartRow {
  /** As shown; the first is x. Where a line has no value the cell says so. */
  readonly cells: readonly string[];
  /** True for the row of the present point. */
  readonly present: boolean;
}

const MISSING = 'no value';

/** About `count` rows, evenly spread over the chart, and one for the present point. */
export function chartRows(data: ChartData, count = 11): ChartTable {
  const header = [formatAxisLabel(data.x), ...nameColumns(data)];
  return { header, rows: chooseXs(data, count).map((x) => readRow(data, x)) };
}

/** Heads of the columns of y: the line's name and the unit. */
export function nameColumns({ series, y }: ChartData): readonly string[] {
  return series.map(({ label }) => formatAxisLabel({ label: label || y.label, unit: y.unit }));
}

function chooseXs({ x, now }: ChartData, count: number): readonly number[] {
  const steps = Math.max(1, Math.round(count) - 1);
  const even = Array.from({ length: steps + 1 }, (_, i) => x.from + ((x.to - x.from) * i) / steps);
  const present = now === undefined || !Number.isFinite(now) ? [] : [now];
  return [...new Set([...even, ...present])].sort((a, b) => a - b);
}

function readRow({ x, y, series, now }: ChartData, at: number): ChartRow {
  const present = at === now;
  const cells = series.map((line) => {
    const value = present && line.now !== undefined ? line.now : valueAt(line.points, at);
    return formatTo(value, resolutionOf(y)) || MISSING;
  });
  return { cells: [formatTo(at, resolutionOf(x)), ...cells], present };
}
