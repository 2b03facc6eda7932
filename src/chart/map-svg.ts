import * as Plot from '@observablehq/plot';
import { createLettering, LINE } from '../drawing/lettering.ts';
import { createPen, type DrawingOptions, describe, type Pen } from '../drawing/svg.ts';
import { textWidth } from '../drawing/text-width.ts';
import type { ChartData } from '../sheet/chart-data.ts';
import type { MapData } from '../sheet/map-data.ts';
import { type ChartFrame, layOutFrame } from './chart-frame.ts';
import { type Place, placeLabels } from './chart-labels.ts';
import { formatTo, resolutionOf } from './chart-number.ts';
import { lineStyle } from './chart-palette.ts';
import { type ChartPlan, planChart, SIZE } from './chart-plan.ts';
import {
  createPlace,
  drawAxisLabels,
  drawLabels,
  plotAxes,
  plotMarks,
  settle,
  tidy,
} from './chart-svg.ts';
import { createTicks, tickStep } from './chart-ticks.ts';
import { listLevels, placesAt } from './map-levels.ts';
import { mapSentence } from './map-sentence.ts';
import { type Box, pickBox } from './place-near.ts';

/**
 * A map as one SVG element: contour lines named by their value, the window that the result should lie in
 * washed, the job's point. Its description is the map's sentence. Needs a width of 300 px.
 */
export function mapSVG(data: MapData, options: DrawingOptions): SVGElement {
  const pen = createPen(options);
  const isAlone = options.standalone === true;
  const height = Math.max(240, Math.min(440, options.width * 0.62));
  const axes = axesOf(data);
  const plan = planAxes(data, axes, options.width, height);
  const chart = layOutFrame(axes, plan, options.width, height, undefined);
  const place = createPlace(plan, chart);
  const svg = plot(data, axes, plan, chart, pen, isAlone);
  tidy(svg, pen);
  if (isAlone) settle(svg);
  svg.append(
    ...drawLabels(placeLabels(axes, plan, chart, place), pen, isAlone),
    ...nameLines(data, chart, place, pen, isAlone),
    ...drawAxisLabels(chart, pen),
  );
  describe(pen, svg, options, { title: data.title, description: mapSentence(data) });
  return svg;
}

/** The axes and marks of a map are those of a chart without lines. */
function axesOf({ title, x, y, marks }: MapData): ChartData {
  return { title, x, y, marks, series: [], limits: [], now: undefined };
}

/** The grid fills the frame: no axis is widened to whole steps. */
function planAxes({ x, y }: MapData, axes: ChartData, width: number, height: number): ChartPlan {
  const plan = planChart(axes, width, height);
  const range = { x: [x.from, x.to], y: [y.from, y.to], cropped: false } as const;
  return { ...plan, range, yTicks: createTicks(y.from, y.to, tickStep(y.from, y.to, height / 48)) };
}

function plot(
  data: MapData,
  axes: ChartData,
  plan: ChartPlan,
  { frame, width, height, ...texts }: ChartFrame,
  pen: Pen,
  isAlone: boolean,
): SVGElement {
  const { now } = data;
  const { set, paper } = pen.inks;
  return Plot.plot({
    document: pen.document,
    width,
    height,
    marginLeft: frame.left,
    marginRight: width - frame.right,
    marginTop: frame.top,
    marginBottom: height - frame.bottom,
    x: { type: 'linear', domain: [...plan.range.x], label: null },
    y: { type: 'linear', domain: [...plan.range.y], label: null },
    marks: [
      ...plotWindows(data, pen),
      ...plotAxes(plan, { frame, width, height, ...texts }, pen),
      contour(data, listLevels(data), {
        stroke: lineStyle(0, isAlone).colour,
        strokeWidth: 1.6,
        fill: 'none',
      }),
      ...plotMarks(axes, plan, pen),
      Plot.dot(now === undefined ? [] : [[now.x, now.y] as const], {
        r: 6,
        fill: set,
        stroke: paper,
        strokeWidth: 2,
      }),
    ],
  }) as SVGElement;
}

/** The window is washed, and its edges are heavy. */
function plotWindows(data: MapData, pen: Pen): readonly Plot.Markish[] {
  return data.limits.flatMap(({ least, most }) => [
    contour(data, [least], { fill: pen.inks.setWash, stroke: 'none' }),
    contour(data, [most], { fill: pen.inks.paper, stroke: 'none' }),
    contour(data, [least, most], { stroke: pen.inks.soft, strokeWidth: 3, fill: 'none' }),
  ]);
}

/**
 * The library takes values to stand in the middle of cells: the grid is widened by half a cell, and what
 * lies past the frame is cut off, the closing edges of the contours with it.
 */
function contour(
  { xs, ys, values }: MapData,
  thresholds: readonly number[],
  style: Plot.ContourOptions,
): Plot.Markish {
  const [dx, dy] = [(xs[1]! - xs[0]!) / 2, (ys[1]! - ys[0]!) / 2];
  return Plot.contour([...values], {
    width: xs.length,
    height: ys.length,
    x1: xs[0]! - dx,
    x2: xs.at(-1)! + dx,
    y1: ys[0]! - dy,
    y2: ys.at(-1)! + dy,
    thresholds: [...thresholds],
    clip: true,
    ...style,
  });
}

/** Each line's value on the line, the job's beside its point, none over another. */
function nameLines(
  data: MapData,
  { frame }: ChartFrame,
  place: Place,
  pen: Pen,
  isAlone: boolean,
): readonly SVGElement[] {
  const boxes: Box[] = [];
  const { now } = data;
  const write = (value: number, candidates: readonly Box[], colour: string) => {
    const box = pickBox(candidates, { frame, boxes, lines: [] }, middleOf(frame));
    if (box === undefined) return [];
    boxes.push(box);
    return createLettering(pen, {
      lines: [formatTo(value, resolutionOf(data.z))],
      x: (box.left + box.right) / 2,
      top: box.top,
      anchor: 'middle',
      size: SIZE,
      weight: 700,
      halo: true,
      colour,
    });
  };
  const size = (value: number) => textWidth(formatTo(value, resolutionOf(data.z)), SIZE, 700);
  const own = now === undefined ? [] : [{ at: place([now.x, now.y]), value: now.z }];
  for (const { at } of own) boxes.push(boxOn(at, 14, 14));
  const present = own.flatMap(({ at: [x, y], value }) =>
    write(
      value,
      [18, -18].map((rise) => boxOn([x, y - rise], size(value), SIZE * LINE)),
      pen.inks.set,
    ),
  );
  const { colour } = lineStyle(0, isAlone);
  const lines = listLevels(data).flatMap((level) => {
    const places = placesAt(data, level).map(place);
    const candidates = places.map((at) => boxOn(at, size(level) + 4, SIZE * LINE));
    return write(level, candidates, colour);
  });
  return [...present, ...lines];
}

function middleOf({ left, right, top, bottom }: Box): readonly [number, number] {
  return [(left + right) / 2, (top + bottom) / 2];
}

function boxOn([x, y]: readonly [number, number], width: number, height: number): Box {
  return { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 };
}
