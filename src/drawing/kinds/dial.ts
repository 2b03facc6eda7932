import { atClock } from '../clock.ts';
import type { DrawingData, DrawingDeclaration, DrawingPaper } from '../declaration.ts';
import { PLANS } from '../drawing-plans.ts';
import { drawKey, type KeyEntry, layOutKey } from '../key.ts';
import { createLettering } from '../lettering.ts';
import { line, polygon } from '../shapes.ts';
import { createElement, createPen, createRoot, type Pen } from '../svg.ts';
import { type DialLayout, layOutDial } from './dial-layout.ts';
import { sayDowel, sayOffset, sayReadings } from './dial-words.ts';

const HALF_TURN = Math.PI;
const KEY_WIDTH = 520;
/** ISO 128: the thin line with a long and a short dash is a centre line. */
const CENTRE_LINE = '12 3 3 3';

/**
 * Dial readings round a bore, seen along its axis: angles true, readings and offset on one scale of
 * their own that is far larger than the circle's, and says so.
 */
export const DIAL: DrawingDeclaration = {
  ...PLANS.dial,
  draw: drawDial,
  describe: (data) =>
    [sayReadings(data), sayOffset(data), sayDowel(data)]
      .flatMap((words) => (words ? [`${words}.`] : []))
      .join(' '),
};

function drawDial(data: DrawingData, paper: DrawingPaper): SVGElement {
  const pen = createPen(paper);
  const layout = layOutDial(data, paper.width);
  const wide = Math.min(paper.width, KEY_WIDTH);
  const key = layOutKey(
    listKey(pen, data, layout),
    (paper.width - wide) / 2,
    layout.foot + 4,
    wide,
  );
  const root = createRoot(pen, paper, {
    title: data.title,
    description: DIAL.describe(data),
    width: paper.width,
    height: Math.ceil(key.foot),
  });
  root.append(...drawCircle(pen, layout), ...drawWall(pen, layout));
  root.append(...drawShift(pen, data, layout), ...drawReadings(pen, layout), ...drawKey(pen, key));
  return root;
}

/** The circle that would be read if the bore were true, its centre lines and the hours. */
function drawCircle(pen: Pen, { centre, radius }: DialLayout): readonly SVGElement[] {
  const [x, y] = centre;
  const reach = radius + 8;
  const hours = Array.from({ length: 12 }, (_, i) => (i * HALF_TURN) / 6).map((angle) =>
    line(...atClock(centre, radius - 4, angle), ...atClock(centre, radius + 4, angle)),
  );
  return [
    createElement(pen, 'circle', {
      cx: x,
      cy: y,
      r: radius,
      fill: 'none',
      stroke: pen.inks.soft,
      'stroke-width': 0.9,
      'data-part': 'true',
    }),
    createElement(pen, 'path', {
      d: line(x - reach, y, x + reach, y) + line(x, y - reach, x, y + reach),
      stroke: pen.inks.soft,
      'stroke-width': 0.7,
      'stroke-dasharray': CENTRE_LINE,
    }),
    createElement(pen, 'path', { d: hours.join(''), stroke: pen.inks.soft, 'stroke-width': 0.9 }),
  ];
}

function drawWall(pen: Pen, { wall }: DialLayout): readonly SVGElement[] {
  if (wall.length === 0) return [];
  return [
    createElement(pen, 'path', {
      d: polygon(wall),
      fill: 'none',
      stroke: pen.inks.ink,
      'stroke-width': 1.8,
      'data-part': 'wall',
    }),
  ];
}

function drawReadings(pen: Pen, { points, labelled }: DialLayout): readonly SVGElement[] {
  return points.flatMap(({ at, rim, letters }) => [
    createElement(pen, 'path', {
      d: line(...at, ...rim),
      stroke: pen.inks.soft,
      'stroke-width': 0.7,
    }),
    createElement(pen, 'circle', {
      cx: at[0],
      cy: at[1],
      r: 3.2,
      fill: pen.inks.ink,
      'data-part': 'reading',
    }),
    ...(labelled ? letters.flatMap((each) => createLettering(pen, each)) : []),
  ]);
}

/** Arrow to the bore's centre, the way the dowels point, and where they bring the centre. */
function drawShift(pen: Pen, data: DrawingData, layout: DialLayout): readonly SVGElement[] {
  const { centre, radius, scale } = layout;
  const [offset, direction] = [data.number('offset'), data.number('direction')];
  const [dowel, turned] = [data.number('dowel'), data.number('dowel_direction')];
  const parts: SVGElement[] = [];
  const bore =
    offset === undefined || direction === undefined
      ? undefined
      : atClock(centre, offset * scale, direction + HALF_TURN);
  if (turned !== undefined && dowel !== undefined && dowel > 0) {
    const rim = atClock(centre, radius, turned);
    parts.push(dashed(pen, centre, rim), headAt(pen, rim, turned, pen.inks.set, 'dowel'));
    if (bore !== undefined) parts.push(landing(pen, ...atClock(bore, dowel * scale, turned)));
  }
  if (bore !== undefined && offset! * scale >= 1)
    parts.push(...arrow(pen, centre, bore, direction! + HALF_TURN));
  return parts;
}

type Point = readonly [x: number, y: number];

function dashed(pen: Pen, from: Point, to: Point): SVGElement {
  return createElement(pen, 'path', {
    d: line(...from, ...to),
    stroke: pen.inks.set,
    'stroke-width': 1.4,
    'stroke-dasharray': '6 4',
  });
}

function arrow(pen: Pen, from: Point, to: Point, angle: number): readonly SVGElement[] {
  return [
    createElement(pen, 'path', {
      d: line(...from, ...to),
      stroke: pen.inks.warn,
      'stroke-width': 2.2,
      'data-part': 'offset',
    }),
    headAt(pen, to, angle, pen.inks.warn, 'offset-head'),
  ];
}

/** Filled arrowhead with its tip at a point, pointing in a clock direction. */
function headAt(pen: Pen, tip: Point, angle: number, fill: string, part: string): SVGElement {
  const back = atClock(tip, 11, angle + HALF_TURN);
  const side = (turn: number) => atClock(back, 4, angle + turn);
  const corners = [tip, side(HALF_TURN / 2), side(-HALF_TURN / 2)];
  return createElement(pen, 'path', { d: polygon(corners), fill, 'data-part': part });
}

function landing(pen: Pen, x: number, y: number): SVGElement {
  return createElement(pen, 'circle', {
    cx: x,
    cy: y,
    r: 4,
    fill: pen.inks.paper,
    stroke: pen.inks.set,
    'stroke-width': 1.6,
    'data-part': 'landing',
  });
}

function listKey(pen: Pen, data: DrawingData, layout: DialLayout): readonly KeyEntry[] {
  const [offset, dowel] = [sayOffset(data), sayDowel(data)];
  const entries: KeyEntry[] = [];
  if (offset !== undefined)
    entries.push({
      text: `${offset}.`,
      mark: (x, y) => arrow(pen, [x - 10, y], [x + 10, y], HALF_TURN / 2),
    });
  if (dowel !== undefined)
    entries.push({
      text: `${dowel}.`,
      ...((data.number('dowel') ?? 0) > 0
        ? {
            mark: (x: number, y: number) => [
              dashed(pen, [x - 11, y], [x, y]),
              headAt(pen, [x + 10, y], HALF_TURN / 2, pen.inks.set, 'key'),
            ],
          }
        : {}),
    });
  if (
    offset !== undefined &&
    (data.number('dowel') ?? 0) > 0 &&
    data.number('dowel_direction') !== undefined
  )
    entries.push({
      text: 'Where the dowels bring the bore’s centre.',
      mark: (x, y) => [landing(pen, x, y)],
    });
  if (!layout.labelled || layout.points.length === 0)
    entries.push({ text: `${sayReadings(data)}.` });
  if (layout.points.length > 0)
    entries.push({
      text: 'Readings and offset are exaggerated, all alike: a high reading is a wall near to the crank’s axis.',
    });
  return entries;
}
