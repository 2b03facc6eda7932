import type { DrawnRange } from './chart-range.ts';
import type { Point } from './clip-line.ts';

/** Where a line ends on the chart, and how: at the right, through the top, or inside. */
export interface LineEnd {
  readonly point: Point;
  readonly edge: 'right' | 'top' | 'inside';
}

/** Share of the chart's width that still counts as its right edge. */
const NEARLY = 0.015;

/** The end of a line as drawn; undefined where nothing of it is on the chart. */
export function findLineEnd(
  stretches: readonly (readonly Point[])[],
  { x, y }: Pick<DrawnRange, 'x' | 'y'>,
): LineEnd | undefined {
  const point = stretches.at(-1)?.at(-1);
  if (point === undefined) return undefined;
  if (x[1] - point[0] <= (x[1] - x[0]) * NEARLY) return { point, edge: 'right' };
  return { point, edge: point[1] >= y[1] ? 'top' : 'inside' };
}
