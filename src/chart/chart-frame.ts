import {
  type Callout,
  calloutsHeight,
  type PlacedCallout,
  placeCallouts,
} from '../drawing/callouts.ts';
import { type Lettering, LINE, lettersHeight } from '../drawing/lettering.ts';
import { textWidth } from '../drawing/text-width.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import type { ChartData } from '../sheet/chart-data.ts';
import { formatNumber } from '../units/format-number.ts';
import { formatAxisLabel } from './chart-number.ts';
import { type ChartPlan, type PlannedLabel, SIZE, TICK_SIZE } from './chart-plan.ts';
import type { Box } from './place-near.ts';

/** From the right edge of the frame to its labels: a leader runs there. */
export const LEAD = 16;
/** From a flag's pole to its text. */
export const PAD = 5;
/** From the top of the frame to the labels over it. */
export const RISE = 5;
/** Length of a tick. */
export const TICK = 4;
/** Between the frame's ticks and the numbers at its left. */
export const ROOM = 4;
/** Between a tick and the number under it: clear of the lowest number at the left. */
export const DEPTH = 7;

/** The frame that lines are drawn in, and what stands around it. */
export interface ChartFrame {
  readonly width: number;
  readonly height: number;
  readonly frame: Box;
  readonly xTicks: readonly string[];
  readonly yTicks: readonly string[];
  readonly axisLabels: readonly Lettering[];
  /** Where the labels over the frame hang. */
  readonly callouts: readonly PlacedCallout[];
}

/** Finds the frame for a width: what is left when all that stands around it has room. */
export function layOutFrame(
  data: ChartData,
  plan: ChartPlan,
  width: number,
  height: number,
  fixedHeight: number | undefined,
): ChartFrame {
  const texts = { xTicks: writeTicks(plan.xTicks), yTicks: writeTicks(plan.yTicks) };
  const [left, right] = [measureLeft(texts), width - measureRight(plan, texts.xTicks)];
  const yLabel = letterAxis(formatAxisLabel(data.y), width);
  const top = lettersHeight(yLabel, SIZE) + ROOM;
  const over = plan.labels.filter(({ edge }) => edge === 'top');
  const callouts = over.map((label) => measureCallout(label, placeX(plan, left, right, label)));
  const placed = placeCallouts(callouts, 0, width);
  const frameTop = top + Math.max(ROOM, calloutsHeight(callouts, placed) + RISE);
  const xLabel = letterAxis(formatAxisLabel(data.x), right);
  const under = TICK + DEPTH + TICK_SIZE * LINE + lettersHeight(xLabel, SIZE) + 2;
  const tall = Math.max(fixedHeight === undefined ? height : fixedHeight - frameTop - under, 120);
  const bottom = frameTop + Math.max(tall, columnHeight(plan));
  const axisLabels: readonly Lettering[] = [
    { lines: yLabel, x: 0, top: 0, anchor: 'start', size: SIZE },
    {
      lines: xLabel,
      x: right,
      top: bottom + under - 2 - lettersHeight(xLabel, SIZE),
      anchor: 'end',
      size: SIZE,
    },
  ];
  const frame = { left, right, top: frameTop, bottom };
  return {
    width,
    height: Math.ceil(bottom + under),
    frame,
    ...texts,
    axisLabels,
    callouts: placed,
  };
}

/** Labels that stand in the column at the right. */
export function listColumn(plan: ChartPlan): readonly PlannedLabel[] {
  return plan.labels.filter(({ edge }) => edge === 'right');
}

/** Size of a label over the frame, its distance from the pole included. */
export function measureCallout({ width, lines }: PlannedLabel, x: number): Callout {
  return { x, width: width + 2 * PAD, height: lettersHeight(lines, SIZE) };
}

/** Numbers of one axis carry the same number of decimals. */
function writeTicks(ticks: readonly number[]): readonly string[] {
  const step = ticks.length > 1 ? ticks[1]! - ticks[0]! : 1;
  // A step as it comes out of a difference: 0.30000000000000004 − 0.2.
  const resolution = Number(step.toPrecision(6));
  return ticks.map((tick) => formatNumber(tick, { resolution }));
}

function measureLeft(texts: Pick<ChartFrame, 'xTicks' | 'yTicks'>): number {
  const beside = texts.yTicks.map((text) => textWidth(text, TICK_SIZE) + TICK + ROOM);
  const first = textWidth(texts.xTicks[0] ?? '', TICK_SIZE) / 2 + 1;
  return Math.ceil(Math.max(first, ...beside));
}

/** Room for the column, or for the half of the last number that hangs over the frame's edge. */
function measureRight(plan: ChartPlan, texts: readonly string[]): number {
  const column = Math.max(0, ...listColumn(plan).map(({ width }) => width + LEAD + 1));
  return Math.ceil(Math.max(column, textWidth(texts.at(-1) ?? '', TICK_SIZE) / 2 + 1));
}

function columnHeight(plan: ChartPlan): number {
  return listColumn(plan).reduce((sum, { lines }) => sum + lettersHeight(lines, SIZE), 0);
}

function placeX({ range }: ChartPlan, left: number, right: number, { point }: PlannedLabel) {
  return left + ((point[0] - range.x[0]) / (range.x[1] - range.x[0])) * (right - left);
}

function letterAxis(text: string, width: number): readonly string[] {
  return wrapText(text, width - 2, SIZE);
}
