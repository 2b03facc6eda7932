import { createLettering, LINE } from '../lettering.ts';
import { ARROW, line, polygon } from '../shapes.ts';
import { createElement, type Pen } from '../svg.ts';
import { onArm, type PedalLayout, type Point } from './pedal-layout.ts';

const SIZE = 13;
/** From an arrow that points from outside to the end of its tail. */
const TAIL = 2 * ARROW;

/** A lettered dimension between two points, with its extension lines from the measured points. */
export interface LetteredDimension {
  readonly letter: string;
  readonly from: Point;
  readonly to: Point;
  /** Where its line ends; the extension lines run there from the points. */
  readonly lineFrom: Point;
  readonly lineTo: Point;
  readonly part: string;
}

/** A level dimension at a height. */
export function level(
  letter: string,
  from: Point,
  to: Point,
  y: number,
  part: string,
): LetteredDimension {
  return { letter, from, to, lineFrom: [from[0], y], lineTo: [to[0], y], part };
}

/** A dimension along the arm at rest, from the pivot, so many px beside it. */
export function alongArm(
  layout: PedalLayout,
  letter: string,
  distance: number,
  aside: number,
  part: string,
): LetteredDimension {
  const shift = ([x, y]: Point): Point => [
    x + aside * Math.cos(layout.half),
    y - aside * Math.sin(layout.half),
  ];
  const [from, to] = [layout.pivot, onArm(layout, distance, layout.half)];
  return { letter, from, to, lineFrom: shift(from), lineTo: shift(to), part };
}

/** In the manner of ISO 129: thin lines, closed arrows, which point from outside where it is short. */
export function drawLettered(pen: Pen, dimension: LetteredDimension): readonly SVGElement[] {
  const { letter, from, to, lineFrom, lineTo, part } = dimension;
  const length = Math.hypot(lineTo[0] - lineFrom[0], lineTo[1] - lineFrom[1]);
  const along: Point =
    length > 0 ? [(lineTo[0] - lineFrom[0]) / length, (lineTo[1] - lineFrom[1]) / length] : [1, 0];
  const short = length < 2 * ARROW + 4;
  const reach = short ? TAIL : 0;
  const back: Point = [-along[0], -along[1]];
  const [first, last] = [move(lineFrom, back, reach), move(lineTo, along, reach)];
  return [
    createElement(pen, 'path', {
      d: line(...from, ...lineFrom) + line(...to, ...lineTo),
      stroke: pen.inks.soft,
      'stroke-width': 0.7,
    }),
    createElement(pen, 'path', {
      d: line(...first, ...last),
      stroke: pen.inks.ink,
      'stroke-width': 1,
      'data-part': part,
      'data-length': length,
    }),
    createElement(pen, 'path', {
      d: head(lineFrom, short ? along : back) + head(lineTo, short ? back : along),
      fill: pen.inks.ink,
    }),
    ...createLettering(pen, {
      lines: [letter],
      x: (lineFrom[0] + lineTo[0]) / 2,
      top: (lineFrom[1] + lineTo[1]) / 2 - (SIZE * LINE) / 2,
      anchor: 'middle',
      size: SIZE,
      weight: 700,
      halo: true,
    }),
  ];
}

function move([x, y]: Point, [dx, dy]: Point, by: number): Point {
  return [x + dx * by, y + dy * by];
}

/** Filled arrowhead with its tip at a point, pointing along a unit vector. */
function head(tip: Point, [dx, dy]: Point): string {
  const back = move(tip, [-dx, -dy], ARROW);
  const half = ARROW / 3;
  return polygon([
    tip,
    [back[0] - dy * half, back[1] + dx * half],
    [back[0] + dy * half, back[1] - dx * half],
  ]);
}
