import { type Lettering, LINE, lettersHeight } from '../drawing/lettering.ts';
import { line } from '../drawing/shapes.ts';
import { textWidth } from '../drawing/text-width.ts';
import type { ChartData } from '../sheet/chart-data.ts';
import { type ChartFrame, LEAD, listColumn, measureCallout, PAD, RISE } from './chart-frame.ts';
import { formatTo, resolutionOf } from './chart-number.ts';
import { type ChartPlan, type PlannedLabel, SIZE } from './chart-plan.ts';
import type { Point } from './clip-line.ts';
import { type Box, boxesAround, boxesOver, distanceTo, nearestIn, pickBox } from './place-near.ts';
import { spreadLabels } from './spread-labels.ts';

/** Lettering with what leads to it. */
export interface PlacedLabel {
  readonly letters: Lettering;
  /** Path from what is named to its name; empty where they touch. */
  readonly leader: string;
  /** Index of the line that is named, or what else the label is. */
  readonly names: number | 'mark' | 'limits' | 'now';
}

/** From units of the axes to px. */
export type Place = (point: Point) => Point;

/** Everything said in and around the frame. */
export function placeLabels(
  data: ChartData,
  plan: ChartPlan,
  chart: ChartFrame,
  place: Place,
): readonly PlacedLabel[] {
  const around = [...placeColumn(plan, chart, place), ...placeOver(plan, chart, place)];
  const lines = plan.lines.flatMap(({ stretches }) => stretches.map((each) => each.map(place)));
  const dots = listDots(data, plan).map(({ point }) => boxAround(place(point), 6));
  const scene: Scene = { frame: chart.frame, lines, boxes: dots };
  const inside = [
    ...placeLimits(data, plan, scene, place),
    ...placeEnds(plan, scene, place),
    ...placeNow(data, plan, scene, place),
  ];
  return [...around, ...inside];
}

interface Scene {
  readonly frame: Box;
  readonly lines: readonly (readonly Point[])[];
  /** Grows as labels take their place. */
  readonly boxes: Box[];
}

/** The present point of each line, where it is on the chart. */
export function listDots(
  { now, series }: ChartData,
  { range }: ChartPlan,
): readonly { readonly point: Point; readonly index: number }[] {
  if (now === undefined || now < range.x[0] || now > range.x[1]) return [];
  return series.flatMap(({ now: y }, index) =>
    y !== undefined && y >= range.y[0] && y <= range.y[1]
      ? [{ point: [now, y] as const, index }]
      : [],
  );
}

function placeColumn(plan: ChartPlan, { frame }: ChartFrame, place: Place): readonly PlacedLabel[] {
  const labels = listColumn(plan);
  const [from, to] = [frame.top - RISE + 1, frame.bottom + SIZE / 2];
  const heights = labels.map(({ lines }) => lettersHeight(lines, SIZE));
  const apart = spaceApart(labels, to - from - heights.reduce((sum, height) => sum + height, 0));
  const wishes = labels.map(({ point }, i) => ({
    middle: place(point)[1],
    height: heights[i]! + apart,
  }));
  const middles = spreadLabels(wishes, from, to);
  return labels.map((label, i) => {
    const [x, y] = place(label.point);
    const leader = label.drawn ? line(x, y, frame.right + LEAD - 4, middles[i]!) : '';
    const top = middles[i]! - heights[i]! / 2;
    return {
      letters: letter(label, frame.right + LEAD, top, 'start'),
      leader,
      names: nameOf(label),
    };
  });
}

/** Names of two lines need a gap, or the end of one is read with the head of the next. */
function spaceApart(labels: readonly Pick<PlannedLabel, 'lines'>[], left: number): number {
  if (labels.every(({ lines }) => lines.length === 1)) return 0;
  return Math.max(0, Math.min(SIZE / 2, left / labels.length));
}

function placeOver(plan: ChartPlan, chart: ChartFrame, place: Place): readonly PlacedLabel[] {
  const labels = plan.labels.filter(({ edge }) => edge === 'top');
  return labels.map((label, i) => {
    const [x, y] = place(label.point);
    const { left, rise, anchor } = chart.callouts[i]!;
    const { width, height } = measureCallout(label, x);
    const foot = chart.frame.top - RISE - rise;
    const anchors = { start: left + PAD, middle: left + width / 2, end: left + width - PAD };
    const letters = letter(label, anchors[anchor], foot - height, anchor);
    const pole = anchor === 'middle' ? foot : foot - height + 3;
    return { letters, leader: label.drawn ? line(x, y, x, pole) : '', names: nameOf(label) };
  });
}

function letter(
  { lines, line: named }: Pick<PlannedLabel, 'lines' | 'line'>,
  x: number,
  top: number,
  anchor: Lettering['anchor'],
): Lettering {
  const weight = named === undefined ? 400 : 700;
  return { lines, x, top, anchor, size: SIZE, weight, halo: true };
}

function nameOf(label: PlannedLabel): PlacedLabel['names'] {
  return label.line ?? 'mark';
}

/** Mutates the scene: what is placed is in the way of what follows. */
function placeEnds(plan: ChartPlan, scene: Scene, place: Place): readonly PlacedLabel[] {
  const labels = plan.labels.filter(({ edge }) => edge === 'inside');
  return labels.map((label) => {
    const at = place(label.point);
    const [width, height] = [label.width, lettersHeight(label.lines, SIZE)];
    const around = boxesAround(at, width, height, 8);
    const anywhere = [...around, ...boxesOver(scene.frame, width, height, 8)];
    // In a frame too full for it a label lies over its point rather than being left out.
    const box = pickBox(anywhere, scene, at) ?? around[0]!;
    scene.boxes.push(box);
    const letters = letter(label, box.left, box.top, 'start');
    return { letters, leader: lead(at, box), names: nameOf(label) };
  });
}

function lead(point: Point, box: Box): string {
  const [x, y] = nearestIn(box, point);
  return line(...point, x, y);
}

/** Names of windows stand in them. Mutates the scene. */
function placeLimits(
  data: ChartData,
  plan: ChartPlan,
  scene: Scene,
  place: Place,
): readonly PlacedLabel[] {
  return data.limits.flatMap(({ least, most, label }) => {
    const ends = [least, most].map((y) => formatTo(y, resolutionOf(data.y)));
    const text = `${label} ${ends[0]} to ${ends[1]}`;
    const window = cutBand(
      place([plan.range.x[0], most])[1],
      place([plan.range.x[0], least])[1],
      scene.frame,
    );
    const box = window && pickBox(boxesIn(window, textWidth(text, SIZE) + 4), scene);
    if (box === undefined) return [];
    scene.boxes.push(box);
    const letters = letter({ lines: [text], line: undefined }, box.left + 2, box.top, 'start');
    return [{ letters, leader: '', names: 'limits' as const }];
  });
}

function cutBand(top: number, bottom: number, frame: Box): Box | undefined {
  const band = { ...frame, top: Math.max(top, frame.top), bottom: Math.min(bottom, frame.bottom) };
  return band.bottom > band.top ? band : undefined;
}

/** Places along the upper and the lower edge of a window, and around it where it is too thin. */
function boxesIn(band: Box, width: number): readonly Box[] {
  const height = SIZE * LINE;
  const tall = band.bottom - band.top >= height + 4;
  const tops = tall
    ? [band.top + 2, band.bottom - height - 2, (band.top + band.bottom - height) / 2]
    : [band.top - height - 2, band.bottom + 2];
  const room = band.right - band.left - width - 12;
  const lefts = [0, 1, 0.5, 0.25, 0.75].map((share) => band.left + 6 + share * room);
  return tops.flatMap((top) =>
    lefts.map((left) => ({ left, top, right: left + width, bottom: top + height })),
  );
}

/** Values at the dots, as many as there is room for; all stand in the sentence and the table. */
function placeNow(
  data: ChartData,
  plan: ChartPlan,
  scene: Scene,
  place: Place,
): readonly PlacedLabel[] {
  const dots = listDots(data, plan).map(({ point }) => ({ at: place(point), value: point[1] }));
  return dots.flatMap(({ at, value }) => {
    const text = formatTo(value, resolutionOf(data.y));
    const others = dots.map((dot) => dot.at).filter((other) => other !== at);
    const around = boxesAround(at, textWidth(text, SIZE, 700), SIZE * LINE, 7).slice(0, 8);
    const own = around.filter((box) => others.every((other) => belongs(box, at, other)));
    const box = pickBox([...own.slice(4), ...own.slice(0, 4)], scene);
    if (box === undefined) return [];
    scene.boxes.push(box);
    const letters = letter({ lines: [text], line: 0 }, box.left, box.top, 'start');
    return [{ letters, leader: '', names: 'now' as const }];
  });
}

/** True where nobody can take a value for that of another dot. */
function belongs(box: Box, own: Point, other: Point): boolean {
  return distanceTo(box, other) > distanceTo(box, own) + 5;
}

function boxAround([x, y]: Point, reach: number): Box {
  return { left: x - reach, top: y - reach, right: x + reach, bottom: y + reach };
}
