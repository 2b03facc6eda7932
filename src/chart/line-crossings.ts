import { listStretches, type Point } from './clip-line.ts';

/** Crossings nearer to each other than this share of the line are one: a peak that just touches. */
const ONE_PLACE = 1e-6;

/** The x at which a line meets a level, from left to right, between samples by a straight line. */
export function findCrossings(points: readonly Point[], level: number): readonly number[] {
  const xs = listStretches(points).flatMap((stretch) => crossStretch(stretch, level));
  const near = Math.abs((points.at(-1)?.[0] ?? 0) - (points[0]?.[0] ?? 0)) * ONE_PLACE;
  return xs.filter((x, i) => i === 0 || x - xs[i - 1]! > near);
}

function crossStretch(stretch: readonly Point[], level: number): readonly number[] {
  const xs: number[] = [];
  stretch.forEach((point, i) => {
    const before = stretch[i - 1];
    if (point[1] === level && before?.[1] !== level) xs.push(point[0]);
    else if (before !== undefined && (before[1] - level) * (point[1] - level) < 0)
      xs.push(before[0] + ((level - before[1]) / (point[1] - before[1])) * (point[0] - before[0]));
  });
  return xs;
}

/** Stretches of x over which a line lies from `least` to `most`. */
export function findInside(
  points: readonly Point[],
  least: number,
  most: number,
): readonly (readonly [from: number, to: number])[] {
  const spans: [number, number][] = [];
  for (const stretch of listStretches(points))
    for (const span of insideStretch(stretch, least, most)) addSpan(spans, span);
  return spans;
}

/** Mutates `spans`. */
function addSpan(spans: [number, number][], [from, to]: readonly [number, number]): void {
  const last = spans.at(-1);
  if (last !== undefined && from <= last[1]) last[1] = Math.max(last[1], to);
  else spans.push([from, to]);
}

function insideStretch(stretch: readonly Point[], least: number, most: number) {
  const isInside = (y: number) => y >= least && y <= most;
  const stops = [
    stretch[0]![0],
    ...crossStretch(stretch, least),
    ...crossStretch(stretch, most),
    stretch.at(-1)![0],
  ].sort((a, b) => a - b);
  const spans: (readonly [number, number])[] = [];
  for (let i = 1; i < stops.length; i++) {
    const [from, to] = [stops[i - 1]!, stops[i]!];
    if (to > from && isInside(valueAt(stretch, (from + to) / 2))) spans.push([from, to]);
  }
  return spans;
}

/** y of a line at x, between samples by a straight line; NaN in gaps and beyond its ends. */
export function valueAt(points: readonly Point[], x: number): number {
  for (let i = points.length - 1; i >= 0; i--) {
    const [px, py] = points[i]!;
    if (px === x) return py;
    const next = points[i + 1];
    if (px < x) {
      if (next === undefined || next[0] < x) return Number.NaN;
      return py + ((x - px) / (next[0] - px)) * (next[1] - py);
    }
  }
  return Number.NaN;
}
