import type { Point } from './clip-line.ts';

/** Edges of a rectangle in px. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** What a label has to keep clear of. */
export interface Obstacles {
  /** Nothing may leave this. */
  readonly frame: Box;
  /** Nothing may lie on one of these. */
  readonly boxes: readonly Box[];
  /** Better not to lie on one of these: lines, as points in px. */
  readonly lines: readonly (readonly Point[])[];
}

/** So many px further off are as bad as a line through the label. */
const CROSSED = 60;

/**
 * The free box with the fewest lines through it and, of those, the nearest to `point`; the first
 * where several are as good. Undefined where none is free.
 */
export function pickBox(
  candidates: readonly Box[],
  obstacles: Obstacles,
  point?: Point,
): Box | undefined {
  let best: Box | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const box of candidates) {
    if (!isFree(box, obstacles)) continue;
    const far = point === undefined ? 0 : distanceTo(box, point);
    if (far >= least) continue;
    const cost = countLines(box, obstacles.lines) * CROSSED + far;
    if (cost < least) [best, least] = [box, cost];
  }
  return best;
}

/** Boxes of a size all over a frame, a grid of `step` px. */
export function boxesOver(frame: Box, width: number, height: number, step: number): readonly Box[] {
  const boxes: Box[] = [];
  for (let top = frame.top; top + height <= frame.bottom; top += step)
    for (let left = frame.left; left + width <= frame.right; left += step)
      boxes.push({ left, top, right: left + width, bottom: top + height });
  return boxes;
}

/** Boxes of a size around a point: right, left, above, below, and the corners. */
export function boxesAround(
  [x, y]: Point,
  width: number,
  height: number,
  gap: number,
): readonly Box[] {
  const sides = [
    [1, 0],
    [0, -1],
    [0, 1],
    [-1, 0],
    [1, -1],
    [-1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  return [gap, 3 * gap].flatMap((distance) =>
    sides.map(([dx, dy]) => {
      const left = x - width / 2 + dx * (width / 2 + distance);
      const top = y - height / 2 + dy * (height / 2 + distance);
      return { left, top, right: left + width, bottom: top + height };
    }),
  );
}

function isFree(box: Box, { frame, boxes }: Obstacles): boolean {
  const inside =
    box.left >= frame.left &&
    box.right <= frame.right &&
    box.top >= frame.top &&
    box.bottom <= frame.bottom;
  return inside && boxes.every((other) => !meet(box, other));
}

/** The point of a box that is nearest to a point outside it. */
export function nearestIn(box: Box, [x, y]: Point): Point {
  return [Math.max(box.left, Math.min(x, box.right)), Math.max(box.top, Math.min(y, box.bottom))];
}

export function distanceTo(box: Box, point: Point): number {
  const [x, y] = nearestIn(box, point);
  return Math.hypot(point[0] - x, point[1] - y);
}

export function meet(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** How many of the lines run through a box. */
export function countLines(box: Box, lines: readonly (readonly Point[])[]): number {
  return lines.filter((line) =>
    line.some((point, i) => i > 0 && segmentMeets(line[i - 1]!, point, box)),
  ).length;
}

function segmentMeets([ax, ay]: Point, [bx, by]: Point, box: Box): boolean {
  const apart =
    Math.max(ax, bx) < box.left ||
    Math.min(ax, bx) > box.right ||
    Math.max(ay, by) < box.top ||
    Math.min(ay, by) > box.bottom;
  if (apart) return false;
  const corners = [
    [box.left, box.top],
    [box.right, box.top],
    [box.right, box.bottom],
    [box.left, box.bottom],
  ] as const;
  const sides = corners.map(([x, y]) => Math.sign((bx - ax) * (y - ay) - (by - ay) * (x - ax)));
  return sides.some((side) => side !== sides[0]) || sides[0] === 0;
}
