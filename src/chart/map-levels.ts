import type { MapData } from '../sheet/map-data.ts';
import { createTicks, tickStep } from './chart-ticks.ts';
import type { Point } from './clip-line.ts';

/** Contour lines that people can tell apart. */
const ABOUT = 12;

/** Round values of the result that lines are drawn at; none where it is the same everywhere. */
export function listLevels({ z: { from, to } }: MapData): readonly number[] {
  if (!(to > from)) return [];
  return createTicks(from, to, tickStep(from, to, ABOUT)).filter((z) => z > from && z < to);
}

/** Places where the result comes to a level, in the units of the axes: along every row and column of the grid. */
export function placesAt({ xs, ys, values }: MapData, level: number): readonly Point[] {
  const at = (i: number, j: number) => values[j * xs.length + i]!;
  const found: Point[] = [];
  for (let j = 0; j < ys.length; j += 1) {
    for (let i = 0; i < xs.length; i += 1) {
      const here = at(i, j);
      const right = i + 1 < xs.length ? share(here, at(i + 1, j), level) : undefined;
      const above = j + 1 < ys.length ? share(here, at(i, j + 1), level) : undefined;
      if (right !== undefined) found.push([xs[i]! + right * (xs[i + 1]! - xs[i]!), ys[j]!]);
      if (above !== undefined) found.push([xs[i]!, ys[j]! + above * (ys[j + 1]! - ys[j]!)]);
    }
  }
  return found;
}

/** How far from one value to the next the level lies, 0 to 1; undefined where it does not. */
function share(a: number, b: number, level: number): number | undefined {
  const part = (level - a) / (b - a);
  return part >= 0 && part < 1 ? part : undefined;
}
