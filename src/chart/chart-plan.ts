import { textWidth } from '../drawing/text-width.ts';
import { widestLine, wrapText } from '../drawing/wrap-text.ts';
import type { ChartData, Mark } from '../sheet/chart-data.ts';
import { formatTo, resolutionOf } from './chart-number.ts';
import { type DrawnRange, drawnRange, type Range } from './chart-range.ts';
import { createTicks, niceRange, tickStep } from './chart-ticks.ts';
import { clipLine, listStretches, type Point } from './clip-line.ts';
import { findLineEnd } from './line-end.ts';

/** Sizes of lettering in px. */
export const SIZE = 13;
export const TICK_SIZE = 12;

/** Share of the width that labels at the right may take before they are broken into lines. */
const COLUMN = 0.3;

/** What a chart consists of, before anything has a place in px. */
export interface ChartPlan {
  readonly range: DrawnRange;
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  readonly lines: readonly PlannedLine[];
  readonly labels: readonly PlannedLabel[];
}

export interface PlannedLine {
  readonly index: number;
  /** In the units of the axes, cut to the range. */
  readonly stretches: readonly (readonly Point[])[];
}

export interface PlannedLabel {
  readonly lines: readonly string[];
  readonly width: number;
  /** What it points at, in the units of the axes. */
  readonly point: Point;
  readonly edge: 'right' | 'top' | 'inside';
  /** Index of the line that it names; undefined for a mark. */
  readonly line: number | undefined;
  /** False for a mark that lies off the chart and is only told. */
  readonly drawn: boolean;
}

/** Chooses ranges, ticks, and what is to be said at which edge. */
export function planChart(data: ChartData, width: number, height: number): ChartPlan {
  const wanted = drawnRange(data);
  const xTicks = createTicks(...wanted.x, tickStep(...wanted.x, countTicks(wanted.x, width)));
  const step = tickStep(...wanted.y, height / 48);
  // Past a window only a little is shown; whole steps would make it much.
  const exact = wanted.cropped || data.limits.length > 0;
  const y = exact ? wanted.y : niceRange(...wanted.y, step);
  const range = { ...wanted, y };
  const lines = data.series.map(({ points }, index) => ({
    index,
    stretches: clipLine(points, range.x, range.y),
  }));
  const labels = [...labelLines(data, lines, range, width), ...labelMarks(data, range, width)];
  return { range, xTicks, yTicks: createTicks(...y, step), lines, labels };
}

/** So many that their numbers stand well apart. */
function countTicks(range: Range, width: number): number {
  const resolution = resolutionOf({ from: range[0], to: range[1] });
  const wide = range.map((end) => textWidth(formatTo(end, resolution), TICK_SIZE));
  return (width - 100) / Math.max(64, ...wide.map((each) => each + 24));
}

function labelLines(
  data: ChartData,
  lines: readonly PlannedLine[],
  range: DrawnRange,
  width: number,
): readonly PlannedLabel[] {
  // A single line is named by its axis.
  if (data.series.length === 1) return [];
  return lines.flatMap(({ index, stretches }) => {
    const { label, points } = data.series[index]!;
    const end = findLineEnd(stretches, range);
    if (end === undefined) return tellAbsent(label, points, range, width, index);
    return [{ ...end, ...wrap(label, width, 700), line: index, drawn: true }];
  });
}

/** A line that runs wholly past the chart is told, not left out; one without values is not. */
function tellAbsent(
  label: string,
  points: readonly Point[],
  { x, y }: DrawnRange,
  width: number,
  line: number,
): readonly PlannedLabel[] {
  const [first] = listStretches(points).flat();
  if (first === undefined) return [];
  const off = first[1] > y[1] ? 1 : -1;
  const text = `${label} (off the chart, ${nameOff({ axis: 'y' }, off)})`;
  const point = [x[1], off === 1 ? y[1] : y[0]] as const;
  return [{ ...wrap(text, width, 700), point, edge: 'right', line, drawn: false }];
}

function labelMarks(data: ChartData, range: DrawnRange, width: number): readonly PlannedLabel[] {
  return data.marks
    .filter(({ value }) => Number.isFinite(value))
    .map((mark) => labelMark(data, mark, range, width));
}

function labelMark(data: ChartData, mark: Mark, range: DrawnRange, width: number): PlannedLabel {
  const [from, to] = range[mark.axis];
  const off = mark.value > to ? 1 : mark.value < from ? -1 : 0;
  const at = Math.max(from, Math.min(to, mark.value));
  const point: Point = mark.axis === 'x' ? [at, range.y[1]] : [range.x[1], at];
  const number = formatTo(mark.value, resolutionOf(data[mark.axis]));
  const text = `${mark.label} ${number}${off === 0 ? '' : ` (off the chart, ${nameOff(mark, off)})`}`;
  const edge = mark.axis === 'x' ? 'top' : 'right';
  return { ...wrap(text, width, 400), point, edge, line: undefined, drawn: off === 0 };
}

function nameOff({ axis }: Pick<Mark, 'axis'>, off: number): string {
  if (axis === 'y') return off > 0 ? 'higher' : 'lower';
  return off > 0 ? 'further right' : 'further left';
}

function wrap(text: string, width: number, weight: 400 | 700) {
  const lines = wrapText(text, Math.max(70, width * COLUMN), SIZE, weight);
  return { lines, width: widestLine(lines, SIZE, weight) };
}
