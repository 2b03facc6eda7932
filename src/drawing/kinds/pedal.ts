import type { DrawingData, DrawingDeclaration, DrawingPaper } from '../declaration.ts';
import { PLANS } from '../drawing-plans.ts';
import { drawKey, type KeyEntry, layOutKey } from '../key.ts';
import { hatch, line, polygon } from '../shapes.ts';
import { createElement, createPen, createRoot, type Pen } from '../svg.ts';
import { alongArm, drawLettered, type LetteredDimension, level } from './pedal-dimensions.ts';
import { layOutPedal, MASTER, onArm, type PedalLayout, type Point } from './pedal-layout.ts';

/** From this width on the key stands beside the drawing. */
const WIDE = 620;
/** ISO 128: a thin line with a long and two short dashes is another position of a moving part. */
const PHANTOM = '14 3 3 3 3 3';
/** Thickness of the arm, behind its front face; not to scale. */
const ARM = 7;

/** The pedal in side view, to scale: at rest, on its stop, the stop on the bulkhead. */
export const PEDAL: DrawingDeclaration = {
  ...PLANS.pedal,
  draw: drawPedal,
  describe: (data) => {
    const said = listSizes(data).map(({ text }) => text);
    return `Pedal in side view, to scale. ${said.length === 0 ? 'No size is known yet' : said.join('; ')}.`;
  },
};

interface SaidSize {
  readonly letter: string;
  readonly text: string;
}

const SIZES: readonly (readonly [letter: string, slot: string, words: string])[] = [
  ['A', 'stop_length', 'length of the stop'],
  ['B', 'pad_travel', 'pad travel on the stop'],
  ['C', 'pad_radius', 'pivot to pad'],
  ['D', 'stop_radius', 'pivot to stop'],
  ['E', 'rod_radius', 'pivot to pushrod'],
  ['F', 'floor', 'pad to floor'],
];

function listSizes(data: DrawingData): readonly SaidSize[] {
  return SIZES.flatMap(([letter, slot, words]) =>
    data.number(slot) === undefined
      ? []
      : [{ letter, text: `${letter} ${words}: ${data.show(slot)}` }],
  );
}

function drawPedal(data: DrawingData, paper: DrawingPaper): SVGElement {
  const pen = createPen(paper);
  const wide = paper.width >= WIDE;
  const beside = wide ? 220 : 0;
  const layout = layOutPedal(data, 0, paper.width - beside);
  const foot = layout?.foot ?? 0;
  const entries = listKey(data, layout);
  const key = wide
    ? layOutKey(entries, paper.width - beside, 20, beside)
    : layOutKey(entries, 0, foot + 4, paper.width);
  const root = createRoot(pen, paper, {
    title: data.title,
    description: PEDAL.describe(data),
    width: paper.width,
    height: Math.ceil(Math.max(foot, key.foot)),
  });
  if (layout !== undefined) root.append(...drawParts(pen, data, layout));
  root.append(...drawKey(pen, key));
  return root;
}

function listKey(data: DrawingData, layout: PedalLayout | undefined): readonly KeyEntry[] {
  const sizes = listSizes(data);
  if (layout === undefined)
    return [
      ...sizes,
      { text: 'Not drawn: the length of the pedal and its travel are not known yet.' },
    ];
  const turned = (layout.half * 2 * 180) / Math.PI;
  return [
    ...sizes,
    {
      text: `The pedal swings through ${turned.toFixed(0)}°. To scale, but for the thickness of the arm and the outline of the master.`,
    },
  ];
}

function drawParts(pen: Pen, data: DrawingData, layout: PedalLayout): readonly SVGElement[] {
  return [
    ...drawBulkhead(pen, layout),
    ...drawFloor(pen, layout),
    ...drawRod(pen, layout),
    ...drawStop(pen, data, layout),
    ...drawArm(pen, layout, -layout.half, true),
    ...drawArm(pen, layout, layout.half, false),
    ...drawPivot(pen, layout),
    ...listDimensions(data, layout).flatMap((dimension) => drawLettered(pen, dimension)),
  ];
}

/** Front face on the line from the pivot; thickness and pad behind it, on the foot's side. */
function drawArm(
  pen: Pen,
  layout: PedalLayout,
  lean: number,
  phantom: boolean,
): readonly SVGElement[] {
  const behind = ([x, y]: Point, by: number): Point => [
    x + by * Math.cos(lean),
    y - by * Math.sin(lean),
  ];
  const at = (share: number) => onArm(layout, share * layout.pad, lean);
  const arm = polygon([layout.pivot, at(1), behind(at(1), ARM), behind(layout.pivot, ARM)]);
  const [low, high] = [at(1.06), at(0.93)];
  const pad = polygon([
    behind(high, ARM),
    behind(low, ARM),
    behind(low, 2 * ARM),
    behind(high, 2 * ARM),
  ]);
  const stroke = phantom
    ? { stroke: pen.inks.soft, 'stroke-width': 0.9, 'stroke-dasharray': PHANTOM, fill: 'none' }
    : { stroke: pen.inks.ink, 'stroke-width': 1.6, fill: pen.inks.paper };
  return [
    createElement(pen, 'path', {
      d: arm + pad,
      ...stroke,
      'data-part': phantom ? 'pressed' : 'rest',
    }),
  ];
}

function drawPivot(pen: Pen, { pivot: [x, y] }: PedalLayout): readonly SVGElement[] {
  const bracket = { x: x - 16, y: y - 22, width: 32, height: 8 };
  return [
    createElement(pen, 'path', {
      d:
        hatch(bracket, 5) +
        line(x - 16, y - 14, x + 16, y - 14) +
        line(x - 7, y - 14, x, y) +
        line(x + 7, y - 14, x, y),
      stroke: pen.inks.soft,
      'stroke-width': 0.9,
    }),
    createElement(pen, 'circle', {
      cx: x,
      cy: y,
      r: 4.5,
      fill: pen.inks.paper,
      stroke: pen.inks.ink,
      'stroke-width': 1.6,
    }),
  ];
}

function drawBulkhead(pen: Pen, { bulkhead, pivot, pad }: PedalLayout): readonly SVGElement[] {
  if (bulkhead === undefined) return [];
  const [top, bottom] = [pivot[1] - 14, pivot[1] + pad * 1.06];
  return [
    createElement(pen, 'path', {
      d: hatch({ x: bulkhead - 8, y: top, width: 8, height: bottom - top }),
      stroke: pen.inks.soft,
      'stroke-width': 0.8,
    }),
    createElement(pen, 'path', {
      d: line(bulkhead, top, bulkhead, bottom),
      stroke: pen.inks.ink,
      'stroke-width': 1.6,
      'data-part': 'bulkhead',
    }),
  ];
}

function drawFloor(pen: Pen, layout: PedalLayout): readonly SVGElement[] {
  const { floor } = layout;
  if (floor === undefined) return [];
  const y = onArm(layout, layout.pad, layout.half)[1];
  return [
    createElement(pen, 'path', {
      d: hatch({ x: floor - 8, y: y - 13, width: 8, height: 26 }),
      stroke: pen.inks.soft,
      'stroke-width': 0.8,
    }),
    createElement(pen, 'path', {
      d: line(floor, y - 13, floor, y + 13),
      stroke: pen.inks.ink,
      'stroke-width': 1.4,
      'data-part': 'floor',
    }),
  ];
}

/** Pushrod at rest, and the outline of the master on the far side of the bulkhead. */
function drawRod(pen: Pen, layout: PedalLayout): readonly SVGElement[] {
  const { rod, bulkhead, pad, half } = layout;
  if (rod === undefined) return [];
  const [x, y] = onArm(layout, rod, half);
  const pressed = onArm(layout, rod, -half);
  const end = bulkhead ?? x - pad * 0.6;
  const master = {
    x: end - MASTER * pad,
    y: y - 0.05 * pad,
    width: MASTER * pad,
    height: 0.1 * pad,
  };
  return [
    createElement(pen, 'path', {
      d: line(x, y, end, y),
      stroke: pen.inks.ink,
      'stroke-width': 2.4,
      'data-part': 'rod',
    }),
    ...(bulkhead === undefined
      ? []
      : [
          createElement(pen, 'rect', {
            ...master,
            fill: pen.inks.paper,
            stroke: pen.inks.ink,
            'stroke-width': 1.4,
            'data-part': 'master',
          }),
        ]),
    createElement(pen, 'circle', { cx: x, cy: y, r: 3, fill: pen.inks.ink }),
    createElement(pen, 'circle', {
      cx: pressed[0],
      cy: pressed[1],
      r: 3,
      fill: 'none',
      stroke: pen.inks.soft,
      'stroke-width': 0.9,
    }),
  ];
}

function drawStop(pen: Pen, data: DrawingData, layout: PedalLayout): readonly SVGElement[] {
  const { stop, bulkhead, half } = layout;
  if (stop === undefined || bulkhead === undefined || (data.number('stop_length') ?? 0) <= 0)
    return [];
  const [x, y] = onArm(layout, stop, -half);
  return [
    createElement(pen, 'rect', {
      x: bulkhead,
      y: y - 6,
      width: x - bulkhead,
      height: 12,
      fill: pen.inks.setWash,
      stroke: pen.inks.set,
      'stroke-width': 1.6,
      'data-part': 'stop',
    }),
  ];
}

function listDimensions(data: DrawingData, layout: PedalLayout): readonly LetteredDimension[] {
  const { pad, stop, rod, bulkhead, floor, half } = layout;
  const [rest, pressed] = [onArm(layout, pad, half), onArm(layout, pad, -half)];
  const below = layout.pivot[1] + pad * 1.06;
  const all: LetteredDimension[] = [
    level('B', pressed, rest, below + 20, 'travel'),
    alongArm(layout, 'C', pad, 64, 'pad'),
  ];
  if (stop !== undefined) {
    all.push(alongArm(layout, 'D', stop, 44, 'to-stop'));
    const face = onArm(layout, stop, -half);
    if (bulkhead !== undefined && (data.number('stop_length') ?? 0) > 0)
      all.push(level('A', [bulkhead, face[1]], face, face[1] - 22, 'length'));
  }
  if (rod !== undefined) all.push(alongArm(layout, 'E', rod, 24, 'to-rod'));
  if (floor !== undefined) all.push(level('F', [floor, rest[1]], rest, below + 44, 'to-floor'));
  return all;
}
