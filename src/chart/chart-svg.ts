import * as Plot from '@observablehq/plot';
import { createLettering } from '../drawing/lettering.ts';
import { hatch, type Rectangle } from '../drawing/shapes.ts';
import {
  createElement,
  createPen,
  type DrawingOptions,
  describe,
  type Pen,
  setAttributes,
} from '../drawing/svg.ts';
import type { ChartData, Limits } from '../sheet/chart-data.ts';
import { type ChartFrame, DEPTH, layOutFrame, ROOM, TICK } from './chart-frame.ts';
import { listDots, type Place, type PlacedLabel, placeLabels } from './chart-labels.ts';
import { formatOn } from './chart-number.ts';
import { lineStyle } from './chart-palette.ts';
import { type ChartPlan, planChart, TICK_SIZE } from './chart-plan.ts';
import { chartSentence } from './chart-sentence.ts';
import { joinStretches } from './clip-line.ts';

export interface ChartOptions extends DrawingOptions {
  /** Height in px; without it what suits the width. More is taken where labels need it. */
  readonly height?: number | undefined;
}

/**
 * A chart as one SVG element, laid out for its width: lines told apart by colour and dash and named
 * at their ends, marks and windows named, the present point on each line. Its description is the
 * chart's sentence. Needs a width of 300 px.
 */
export function chartSVG(data: ChartData, options: ChartOptions): SVGElement {
  const pen = createPen(options);
  const standalone = options.standalone === true;
  const height = Math.max(190, Math.min(340, options.width * 0.5));
  const plan = planChart(data, options.width, height);
  const chart = layOutFrame(data, plan, options.width, height, options.height);
  const place = createPlace(plan, chart);
  const svg = plot(data, plan, chart, pen, standalone);
  tidy(svg, pen);
  if (standalone) settle(svg);
  const labels = placeLabels(data, plan, chart, place);
  svg.append(...drawLabels(labels, pen, standalone), ...drawAxisLabels(chart, pen));
  describe(pen, svg, options, { title: data.title, description: sayAll(data, plan) });
  return svg;
}

export function createPlace({ range: { x, y } }: ChartPlan, { frame }: ChartFrame): Place {
  const [wide, tall] = [frame.right - frame.left, frame.bottom - frame.top];
  return ([px, py]) => [
    frame.left + ((px - x[0]) / (x[1] - x[0])) * wide,
    frame.bottom - ((py - y[0]) / (y[1] - y[0])) * tall,
  ];
}

function plot(
  data: ChartData,
  plan: ChartPlan,
  chart: ChartFrame,
  pen: Pen,
  standalone: boolean,
): SVGElement {
  const { frame, width, height } = chart;
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
      ...plotAxes(plan, chart, pen),
      ...data.limits.flatMap((limits) => plotLimits(limits, plan, pen)),
      ...plotMarks(data, plan, pen),
      ...plotLines(data, plan, pen, standalone),
    ],
  }) as SVGElement;
}

export function plotAxes(plan: ChartPlan, chart: ChartFrame, pen: Pen): Plot.Markish[] {
  const { soft, rule, ink } = pen.inks;
  const common = { color: soft, fontSize: TICK_SIZE, label: null };
  const [from, to] = plan.range.y;
  return [
    Plot.gridY(plan.yTicks, { stroke: rule, strokeOpacity: 1 }),
    Plot.axisY(plan.yTicks, {
      ...common,
      tickSize: 0,
      tickPadding: TICK + ROOM,
      text: [...chart.yTicks],
    }),
    Plot.axisX(plan.xTicks, {
      ...common,
      tickSize: TICK,
      tickPadding: DEPTH,
      text: [...chart.xTicks],
    }),
    Plot.ruleY([from], { stroke: ink }),
    Plot.ruleY(from < 0 && to > 0 ? [0] : [], { stroke: soft }),
  ];
}

/** The window stays clear, what lies outside is hatched. */
function plotLimits({ least, most }: Limits, plan: ChartPlan, pen: Pen): Plot.Markish[] {
  const [from, to] = plan.range.y;
  const edges = [least, most].filter((edge) => edge > from && edge < to);
  const hatching: Plot.RenderFunction = (_index, scales, _values, dimensions) => {
    const y = (value: number) => Number(scales.y?.(Math.max(from, Math.min(to, value))));
    const x = dimensions.marginLeft;
    const width = dimensions.width - dimensions.marginRight - x;
    const areas: Rectangle[] = [
      { x, width, y: y(to), height: y(most) - y(to) },
      { x, width, y: y(least), height: y(from) - y(least) },
    ];
    const d = areas.map((area) => hatch(area, 8)).join('');
    return createElement(pen, 'path', { d, stroke: pen.inks.rule, 'stroke-width': 1 });
  };
  return [hatching, Plot.ruleY(edges, { stroke: pen.inks.soft, strokeWidth: 1.2 })];
}

export function plotMarks(data: ChartData, { range }: ChartPlan, pen: Pen): Plot.Markish[] {
  const values = (axis: 'x' | 'y') =>
    data.marks
      .filter((mark) => mark.axis === axis)
      .map(({ value }) => value)
      .filter((value) => value >= range[axis][0] && value <= range[axis][1]);
  const style = { stroke: pen.inks.ink, strokeWidth: 1.2 };
  return [Plot.ruleX(values('x'), style), Plot.ruleY(values('y'), style)];
}

function plotLines(
  data: ChartData,
  plan: ChartPlan,
  pen: Pen,
  standalone: boolean,
): Plot.Markish[] {
  const { set, paper } = pen.inks;
  const dots = listDots(data, plan).map(({ point }) => point);
  const present = dots.length > 0 && data.now !== undefined ? [data.now] : [];
  const lines = plan.lines.map(({ index, stretches }) => {
    const { colour, dash } = lineStyle(index, standalone);
    const style = {
      stroke: colour,
      strokeWidth: 2,
      strokeLinecap: dash ? 'butt' : 'round',
    } as const;
    return Plot.line(joinStretches(stretches), {
      ...style,
      ...(dash === undefined ? {} : { strokeDasharray: dash }),
    });
  });
  return [
    Plot.ruleX(present, { stroke: set, strokeWidth: 1, strokeDasharray: '1.5 3' }),
    ...lines,
    ...plan.lines.map(({ index, stretches }) =>
      Plot.dot(stretches.filter((each) => each.length === 1).flat(), {
        r: 2,
        fill: lineStyle(index, standalone).colour,
      }),
    ),
    Plot.dot(dots, { r: 5, fill: set, stroke: paper, strokeWidth: 1.5 }),
  ];
}

/**
 * Mutates the SVG: takes out what the library says to assistive technology (its labels stand on
 * elements that may not have any) and its own style, and puts our inks in.
 */
export function tidy(svg: SVGElement, pen: Pen): void {
  for (const style of svg.querySelectorAll('style')) style.remove();
  for (const element of svg.querySelectorAll('*')) {
    for (const name of ['aria-label', 'aria-description', 'aria-hidden'])
      element.removeAttribute(name);
    for (const name of ['fill', 'stroke'])
      if (element.getAttribute(name) === 'currentColor') element.setAttribute(name, pen.inks.ink);
  }
  svg.removeAttribute('class');
  setAttributes(svg, {
    'font-family': pen.inks.plate,
    'font-variant': 'tabular-nums',
    fill: pen.inks.ink,
    stroke: 'none',
  });
}

const TRANSLATE = /^translate\(([-\d.]+),([-\d.]+)\)$/;

/**
 * Mutates the SVG: the library moves its marks by half a pixel on coarse screens; a file is the same
 * wherever it is drawn.
 */
export function settle(svg: SVGElement): void {
  for (const group of svg.querySelectorAll('g')) {
    const [, x, y] = TRANSLATE.exec(group.getAttribute('transform') ?? '') ?? [];
    if (x === undefined || y === undefined) continue;
    const [right, down] = [Math.floor(Number(x)), Math.floor(Number(y))];
    if (right === 0 && down === 0) group.removeAttribute('transform');
    else group.setAttribute('transform', `translate(${right},${down})`);
  }
}

export function drawLabels(
  labels: readonly PlacedLabel[],
  pen: Pen,
  standalone: boolean,
): readonly SVGElement[] {
  const leaders = labels
    .filter(({ leader }) => leader !== '')
    .map(({ leader, names }) => {
      const stroke = typeof names === 'number' ? lineStyle(names, standalone).colour : pen.inks.ink;
      return createElement(pen, 'path', { d: leader, stroke, 'stroke-width': 1.2, fill: 'none' });
    });
  const letters = labels.flatMap(({ letters: each, names }) =>
    createLettering(pen, names === 'now' ? { ...each, colour: pen.inks.set } : each),
  );
  return [...leaders, ...letters];
}

export function drawAxisLabels({ axisLabels }: ChartFrame, pen: Pen): readonly SVGElement[] {
  return axisLabels.flatMap((letters) =>
    createLettering(pen, { ...letters, colour: pen.inks.soft }),
  );
}

function sayAll(data: ChartData, { range }: ChartPlan): string {
  const sentence = chartSentence(data);
  if (!range.cropped) return sentence;
  return `${sentence} The drawing ends at ${formatOn(data.y, range.y[1])}; the table goes on.`;
}
