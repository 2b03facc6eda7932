import type { ChartData } from '../sheet/chart-data.ts';
import { axisHead, formatCSV, formatNumber } from './csv.ts';

/**
 * A chart's points as CSV (RFC 4180): a head with units, a column for x and one for each line, a row
 * for each point in full precision. A gap is an empty cell; a jump is two rows with one x.
 */
export function chartCSV(data: ChartData): string {
  const header = [
    axisHead(data.x),
    ...data.series.map(({ label }) =>
      axisHead({ label: label || data.y.label, unit: data.y.unit }),
    ),
  ];
  const rows = mergePoints(data).map((row) => row.map(formatNumber));
  return formatCSV([header, ...rows]);
}

/** Lines side by side: each x once, or as often as the line that has it most often. */
function mergePoints({ series }: ChartData): readonly (readonly number[])[] {
  const rows = new Map<number, number[][]>();
  series.forEach(({ points }, column) => {
    const seen = new Map<number, number>();
    for (const [x, y] of points) {
      const turn = seen.get(x) ?? 0;
      seen.set(x, turn + 1);
      rowFor(rows, x, turn, series.length)[column] = y;
    }
  });
  return [...rows]
    .sort(([a], [b]) => a - b)
    .flatMap(([x, turns]) => turns.map((row) => [x, ...row]));
}

/** Mutates `rows` where the row is new. */
function rowFor(rows: Map<number, number[][]>, x: number, turn: number, width: number): number[] {
  const turns = rows.get(x) ?? [];
  rows.set(x, turns);
  turns[turn] ??= new Array<number>(width).fill(Number.NaN);
  return turns[turn];
}
