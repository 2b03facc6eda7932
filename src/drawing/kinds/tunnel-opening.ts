import type { DrawingData, DrawingDeclaration, DrawingPaper } from '../declaration.ts';
import { drawDimensions, layOutDimensions } from '../dimension-rows.ts';
import { PLANS } from '../drawing-plans.ts';
import { drawKey, layOutKey } from '../key.ts';
import { createLettering } from '../lettering.ts';
import { hatch, line } from '../shapes.ts';
import { createElement, createPen, createRoot, formatAttribute, type Pen } from '../svg.ts';
import { dimensionsAcross, dimensionsAlong, measureColumns } from './tunnel-opening-dimensions.ts';
import { createTunnelFrame, type TunnelFrame } from './tunnel-opening-frame.ts';
import { CENTRE_LINE, HIDDEN, IN_FRONT, listKey } from './tunnel-opening-key.ts';
import { type GearLabel, placeGearLabels } from './tunnel-opening-labels.ts';
import {
  createTunnelScene,
  type LeverSpot,
  type Plan,
  roundingOf,
  type TunnelScene,
} from './tunnel-opening-scene.ts';
import { describeOpening } from './tunnel-opening-words.ts';

/** Width of the hatching beside the tunnel's flat. */
const STRIP = 7;
/** Between the figure and what is dimensioned beside it. */
const CLEAR = 6;
const KEY_WIDTH = 520;

/** The opening in the tunnel, seen from above, as it is to be marked and cut. */
export const TUNNEL_OPENING: DrawingDeclaration = {
  ...PLANS.tunnel_opening,
  draw,
  describe: (data) => describeOpening(data, createTunnelScene(data)),
};

function draw(data: DrawingData, paper: DrawingPaper): SVGElement {
  const pen = createPen(paper);
  const scene = createTunnelScene(data);
  const beside = measureColumns(data, scene);
  const frame = createTunnelFrame(scene, paper.width, beside.width + CLEAR, beside.high);
  const columns = layOutDimensions(dimensionsAlong(data, scene, frame, pen), frame.height);
  const rows = layOutDimensions(dimensionsAcross(data, scene, frame, pen), paper.width);
  const labels = labelsOf(scene, frame);
  const rowsTop = frame.height + 2;
  const wide = Math.min(paper.width - 4, KEY_WIDTH);
  const entries = listKey(pen, data, scene, labels !== undefined);
  const key = layOutKey(entries, (paper.width - wide) / 2, rowsTop + rows.height + 6, wide);
  const root = createRoot(pen, paper, {
    title: data.title,
    description: describeOpening(data, scene),
    width: paper.width,
    height: Math.ceil(key.foot),
  });
  root.append(
    ...drawTunnel(pen, scene, frame),
    ...drawPlans(pen, scene, frame),
    ...scene.levers.map((lever) => drawLever(pen, lever, frame)),
    ...drawCentres(pen, scene, frame),
    drawDatum(pen, scene, frame),
    ...drawDimensions(pen, rows, 0, rowsTop),
    turned(pen, frame.height, drawDimensions(pen, columns, 0, frame.width + CLEAR)),
    ...drawLabels(pen, labels ?? []),
    ...drawKey(pen, key),
  );
  return root;
}

/** Upright dimensions are level ones, turned a quarter so that they are read from the right (ISO 129-1). */
function turned(pen: Pen, height: number, parts: readonly SVGElement[]): SVGElement {
  const transform = `translate(0 ${formatAttribute(height)}) rotate(-90)`;
  return createElement(pen, 'g', { transform }, parts);
}

/** The flat of the tunnel's top, its sides falling away, and its middle. */
function drawTunnel(pen: Pen, { tunnel }: TunnelScene, frame: TunnelFrame): readonly SVGElement[] {
  const middle = createElement(pen, 'path', {
    d: line(frame.x(0), 0, frame.x(0), frame.height),
    stroke: pen.inks.soft,
    'stroke-width': 0.8,
    'stroke-dasharray': CENTRE_LINE,
    'data-part': 'middle',
  });
  if (tunnel === undefined) return [middle];
  const [left, right] = [frame.x(-tunnel / 2), frame.x(tunnel / 2)];
  const strip = (x: number) => hatch({ x, y: 0, width: STRIP, height: frame.height });
  return [
    createElement(pen, 'path', {
      d: strip(left - STRIP) + strip(right),
      stroke: pen.inks.soft,
      'stroke-width': 0.7,
    }),
    createElement(pen, 'path', {
      d: line(left, 0, left, frame.height) + line(right, 0, right, frame.height),
      stroke: pen.inks.soft,
      'stroke-width': 1.2,
      'data-part': 'tunnel',
    }),
    middle,
  ];
}

function drawPlans(pen: Pen, scene: TunnelScene, frame: TunnelFrame): readonly SVGElement[] {
  const { hole, least, bezel, peeps, assumed } = scene;
  const opening = drawPlan(pen, hole, frame, 'hole', {
    rx: roundingOf(hole) * frame.scale,
    fill: pen.inks.setWash,
    stroke: pen.inks.set,
    'stroke-width': 2,
    'stroke-dasharray': assumed.length > 0 ? HIDDEN : undefined,
  });
  const smallest = drawPlan(pen, least, frame, 'least', {
    fill: 'none',
    stroke: pen.inks.ink,
    'stroke-width': 1,
    'stroke-dasharray': HIDDEN,
  });
  const cover = drawPlan(pen, bezel, frame, 'bezel', {
    fill: 'none',
    stroke: peeps ? pen.inks.warn : pen.inks.ink,
    'stroke-width': 1.2,
    'stroke-dasharray': IN_FRONT,
  });
  return [...opening, ...smallest, ...cover];
}

function drawPlan(
  pen: Pen,
  plan: Plan | undefined,
  { x, y, scale }: TunnelFrame,
  part: string,
  look: Readonly<Record<string, string | number | undefined>>,
): readonly SVGElement[] {
  if (plan === undefined) return [];
  const size = {
    x: x(plan.left),
    y: y(plan.front),
    width: (plan.right - plan.left) * scale,
    height: (plan.rear - plan.front) * scale,
  };
  return [createElement(pen, 'rect', { ...size, ...look, 'data-part': part })];
}

function drawLever(pen: Pen, lever: LeverSpot, { x, y, scale }: TunnelFrame): SVGElement {
  const { back, right, along, across, touches } = lever;
  return createElement(pen, 'ellipse', {
    cx: x(right),
    cy: y(back),
    rx: across * scale,
    ry: along * scale,
    fill: 'none',
    stroke: touches ? pen.inks.warn : pen.inks.ink,
    'stroke-width': touches ? 1.8 : 1,
    'data-part': 'lever',
  });
}

/** Where the saw's pilot goes in. */
function drawCentres(pen: Pen, scene: TunnelScene, frame: TunnelFrame): readonly SVGElement[] {
  const x = frame.x((scene.hole.left + scene.hole.right) / 2);
  return scene.centres.map((along) => drawCross(pen, x, frame.y(along), 'centre'));
}

function drawCross(pen: Pen, x: number, y: number, part: string): SVGElement {
  return createElement(pen, 'path', {
    d: line(x - 6, y, x + 6, y) + line(x, y - 6, x, y + 6),
    stroke: pen.inks.set,
    'stroke-width': 1.6,
    'data-part': part,
    'data-y': y,
  });
}

function drawDatum(pen: Pen, { datum, extent }: TunnelScene, frame: TunnelFrame): SVGElement {
  const y = frame.y(datum);
  return createElement(pen, 'path', {
    d: line(frame.x(extent.left) - 6, y, frame.x(extent.right) + 6, y),
    stroke: pen.inks.ink,
    'stroke-width': 1.4,
    'stroke-dasharray': CENTRE_LINE,
    'data-part': 'datum',
    'data-y': y,
  });
}

function labelsOf(
  { hole, levers }: TunnelScene,
  frame: TunnelFrame,
): readonly GearLabel[] | undefined {
  const edges = {
    left: frame.x(hole.left),
    right: frame.x(hole.right),
    front: frame.y(hole.front),
    rear: frame.y(hole.rear),
  };
  return placeGearLabels(
    levers,
    ({ right, back }) => [frame.x(right), frame.y(back)],
    edges,
    frame.width,
  );
}

function drawLabels(pen: Pen, labels: readonly GearLabel[]): readonly SVGElement[] {
  return [
    ...labels.flatMap(({ from, to }) => [
      createElement(pen, 'path', {
        d: line(...from, ...to),
        stroke: pen.inks.soft,
        'stroke-width': 0.8,
      }),
      createElement(pen, 'circle', { cx: to[0], cy: to[1], r: 2, fill: pen.inks.ink }),
    ]),
    ...labels.flatMap(({ letters }) => createLettering(pen, letters)),
  ];
}
