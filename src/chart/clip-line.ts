import type { Range } from './chart-range.ts';

export type Point = readonly [x: number, y: number];

const GAP: Point = [Number.NaN, Number.NaN];

/** Stretches of a line without gaps. Infinity counts as a gap. */
export function listStretches(points: readonly Point[]): readonly (readonly Point[])[] {
  const stretches: Point[][] = [[]];
  for (const point of points)
    if (Number.isFinite(point[0]) && Number.isFinite(point[1])) stretches.at(-1)!.push(point);
    else if (stretches.at(-1)!.length > 0) stretches.push([]);
  return stretches.filter((stretch) => stretch.length > 0);
}

/** The stretches of a line that lie inside a frame, cut exactly at its edges. */
export function clipLine(
  points: readonly Point[],
  x: Range,
  y: Range,
): readonly (readonly Point[])[] {
  return listStretches(points).flatMap((stretch) => clipStretch(stretch, x, y));
}

/** Stretches as one line with gaps. */
export function joinStretches(stretches: readonly (readonly Point[])[]): readonly Point[] {
  return stretches.flatMap((stretch, i) => (i === 0 ? stretch : [GAP, ...stretch]));
}

function clipStretch(stretch: readonly Point[], x: Range, y: Range): readonly (readonly Point[])[] {
  const only = stretch[0]!;
  if (stretch.length === 1) return clipSegment(only, only, x, y) === undefined ? [] : [stretch];
  const pieces: Point[][] = [];
  for (let i = 1; i < stretch.length; i++) {
    const piece = clipSegment(stretch[i - 1]!, stretch[i]!, x, y);
    if (piece !== undefined) addPiece(pieces, piece);
  }
  return pieces;
}

/** Mutates `pieces`. */
function addPiece(pieces: Point[][], [from, to]: readonly [Point, Point]): void {
  const end = pieces.at(-1)?.at(-1);
  if (end !== undefined && end[0] === from[0] && end[1] === from[1]) pieces.at(-1)!.push(to);
  else pieces.push([from, to]);
}

/** Liang and Barsky: the part of a segment between its entry into a frame and its exit. */
function clipSegment(a: Point, b: Point, x: Range, y: Range): readonly [Point, Point] | undefined {
  let [entry, exit] = [0, 1];
  for (const [axis, range] of [x, y].entries()) {
    const [from, to] = [a[axis as 0 | 1], b[axis as 0 | 1]];
    if (from === to) {
      if (from < range[0] || from > range[1]) return undefined;
      continue;
    }
    const [first, second] = [(range[0] - from) / (to - from), (range[1] - from) / (to - from)];
    entry = Math.max(entry, Math.min(first, second));
    exit = Math.min(exit, Math.max(first, second));
  }
  if (entry > exit) return undefined;
  const at = (share: number): Point => [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
  return [entry === 0 ? a : at(entry), exit === 1 ? b : at(exit)];
}
