import type { Range } from './chart-range.ts';
import { listStretches, type Point } from './clip-line.ts';

/** How a line runs from left to right. */
export interface LineShape {
  readonly course: 'rises' | 'falls' | 'level' | 'peak' | 'dip' | 'to and fro' | 'nothing';
  readonly first: Point;
  readonly last: Point;
  readonly lowest: Point;
  readonly highest: Point;
}

/** A change smaller than this share of the axis does not count. */
const NOISE = 0.005;
const NOWHERE: Point = [Number.NaN, Number.NaN];

/** Describes a line by its turns; gaps are passed over. */
export function describeShape(points: readonly Point[], y: Range): LineShape {
  const known = listStretches(points).flat();
  const [first, last] = [known[0], known.at(-1)];
  if (first === undefined || last === undefined)
    return { course: 'nothing', first: NOWHERE, last: NOWHERE, lowest: NOWHERE, highest: NOWHERE };
  const lowest = known.reduce((low, point) => (point[1] < low[1] ? point : low));
  const highest = known.reduce((high, point) => (point[1] > high[1] ? point : high));
  const noise = Math.abs(y[1] - y[0]) * NOISE;
  return { course: nameCourse(listTurns(known, noise)), first, last, lowest, highest };
}

/** Directions in turn: 1 up, -1 down; none where the line is level. */
function listTurns(points: readonly Point[], noise: number): readonly number[] {
  const turns: number[] = [];
  let [low, high] = [points[0]![1], points[0]![1]];
  for (const [, y] of points) {
    [low, high] = [Math.min(low, y), Math.max(high, y)];
    const direction = y - low > noise ? 1 : high - y > noise ? -1 : 0;
    if (direction === 0) continue;
    if (turns.at(-1) !== direction) turns.push(direction);
    [low, high] = [y, y];
  }
  return turns;
}

function nameCourse(turns: readonly number[]): LineShape['course'] {
  if (turns.length === 0) return 'level';
  if (turns.length === 1) return turns[0] === 1 ? 'rises' : 'falls';
  if (turns.length === 2) return turns[0] === 1 ? 'peak' : 'dip';
  return 'to and fro';
}
