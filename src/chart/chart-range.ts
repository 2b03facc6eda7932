import type { ChartData } from '../sheet/chart-data.ts';

export type Range = readonly [from: number, to: number];

export interface DrawnRange {
  readonly x: Range;
  readonly y: Range;
  /** True where lines go on past the top of the chart. */
  readonly cropped: boolean;
}

/** A mark further off than this many times what the lines need is told, not drawn. */
const FAR = 2.5;
/** Lines that go so many times higher than what they are judged by are cut off above it. */
const TOO_HIGH = 2;
/** One line alone is what the chart is about: it is left whole for longer. */
const TOO_HIGH_ALONE = 5;
const HEADROOM = 1.12;
/** Share of the height that is shown past the edge of a window. */
const EDGE = 0.08;

/**
 * What a chart shows of its data. Marks and limits are drawn in where they are near. Where lines
 * run far beyond every mark and limit (a first gear at full road speed, far past the redline), the
 * chart ends a little above those, so that what is of use has room.
 */
export function drawnRange(data: ChartData): DrawnRange {
  const x = sound([data.x.from, data.x.to]);
  const lines = sound([data.y.from, data.y.to]);
  const judged = [...listMarks(data), ...medianNow(data)];
  const top = Math.max(...judged);
  const bottom = Math.min(lines[0], ...listMarks(data));
  const end = bottom + (top - bottom) * HEADROOM;
  const isMarked = listMarks(data).length > 0 && top > bottom;
  const cropped = isMarked && isTooHigh(data, lines, bottom, top) && keepsHalf(data, end);
  if (cropped) return { x, y: [lines[0], end], cropped };
  return { x, y: showOutside(takeIn(lines, listMarks(data)), data), cropped };
}

function isTooHigh({ series }: ChartData, lines: Range, bottom: number, top: number): boolean {
  const most = series.length > 1 ? TOO_HIGH : TOO_HIGH_ALONE;
  return lines[1] - bottom > most * (top - bottom);
}

/** A valley between hills is not to be shown without the hills. */
function keepsHalf({ series }: ChartData, end: number): boolean {
  const heights = series.flatMap(({ points }) => points.map(([, y]) => y)).filter(Number.isFinite);
  return heights.filter((y) => y <= end).length >= heights.length / 2;
}

function listMarks({ marks, limits }: ChartData): readonly number[] {
  const onY = marks.filter(({ axis }) => axis === 'y').map(({ value }) => value);
  return [...onY, ...limits.flatMap(({ least, most }) => [least, most])].filter(Number.isFinite);
}

/** The present values of most lines must stay on the chart. */
function medianNow({ series }: ChartData): readonly number[] {
  const now = series.map((line) => line.now ?? Number.NaN).filter(Number.isFinite);
  now.sort((a, b) => a - b);
  return now.slice(Math.floor(now.length / 2)).slice(0, 1);
}

function takeIn([from, to]: Range, marks: readonly number[]): Range {
  const span = to - from;
  const near = marks.filter((mark) => Math.max(mark, to) - Math.min(mark, from) <= FAR * span);
  return [Math.min(from, ...near), Math.max(to, ...near)];
}

/** A little of what lies outside a window is shown, or its edge would be taken for the frame. */
function showOutside([from, to]: Range, { limits }: ChartData): Range {
  const edge = (to - from) * EDGE;
  const tops = limits.map(({ most }) => most + edge).filter((top) => top < to + 2 * edge);
  const feet = limits.map(({ least }) => least - edge).filter((foot) => foot > from - 2 * edge);
  return [Math.min(from, ...feet), Math.max(to, ...tops)];
}

/** In order and of some length. */
function sound([from, to]: Range): Range {
  if (!Number.isFinite(from) || !Number.isFinite(to)) return [0, 1];
  if (from === to) return [from - (Math.abs(from) / 2 || 0.5), to + (Math.abs(to) / 2 || 0.5)];
  return from < to ? [from, to] : [to, from];
}
