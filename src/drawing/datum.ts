import type { Datum, DatumKind } from './datum-kinds.ts';
import { createLettering, type Lettering, lettersHeight } from './lettering.ts';
import { ARROW, arrowhead, hatch, line, type Rectangle } from './shapes.ts';
import { createElement, createPen, createRoot, type DrawingOptions, type Pen } from './svg.ts';
import { wrapText } from './wrap-text.ts';

const SIZE = 11;
/** Height of the sketch itself, without its words. */
const HEIGHT = 42;
/** Where the dimension line of a level sketch runs, and where its parts end. */
const LEVEL = 34;
const FOOT = 26;
/** Faces that a sketch shows one above the other. */
const HIGH = 8;
const LOW = 32;
/** ISO 128: long dash and dot, a centre line. */
const CENTRE_LINE = '8 2 2 2';
/** A face that is called so is no face: it is drawn as a centre. */
const CENTRE = /\b(?:centre|middle|pivot|axis)\b/;
const BETWEEN = 8;

type Draw = (pen: Pen, datum: Datum, width: number) => readonly SVGElement[];

const DRAWS: Readonly<Record<DatumKind, Draw>> = {
  along: drawAlong,
  down: (pen, datum, width) => drawStep(pen, datum, width, HIGH, LOW),
  up: (pen, datum, width) => drawStep(pen, datum, width, LOW, HIGH),
  slope: drawSlope,
  across: drawAcross,
  inside: drawInside,
  round: drawRound,
  runout: drawRunout,
};

/**
 * A small sketch of what a reading is taken from, and to: not to scale, without figures. A circle
 * stands where it is taken from, an arrow where it is taken to.
 */
export function drawDatum(datum: Datum, options: DrawingOptions): SVGElement {
  const pen = createPen(options);
  const words = layOutWords(datum, options.width);
  const root = createRoot(pen, options, {
    title: 'How it is taken',
    description: describeDatum(datum),
    width: options.width,
    height: Math.ceil(words.height),
  });
  const transform = `translate(0 ${words.top})`;
  root.append(
    createElement(pen, 'g', { transform }, DRAWS[datum.kind](pen, datum, options.width)),
    ...words.letters.flatMap((letters) => createLettering(pen, letters)),
  );
  return root;
}

const SAID: Readonly<Record<DatumKind, string>> = {
  along: 'From',
  down: 'Down from',
  up: 'Up from',
  slope: 'The angle from',
  across: 'Over the outside',
  inside: 'Inside',
  round: 'Round the clock',
  runout: 'While it turns',
};

export function describeDatum({ kind, from, to }: Datum): string {
  return to === undefined ? `${SAID[kind]}: ${from}.` : `${SAID[kind]} ${from} to ${to}.`;
}

interface Words {
  /** Where the sketch begins. */
  readonly top: number;
  readonly height: number;
  readonly letters: readonly Lettering[];
}

/** Under each face its name; the two lines of an angle have theirs above and below. */
function layOutWords({ kind, from, to }: Datum, width: number): Words {
  if (to === undefined) return layOutRows([], wrapText(from, width - 4, SIZE), width / 2, 'middle');
  if (kind === 'slope') {
    const [above, below] = [to, from].map((text) => wrapText(text, width - 4, SIZE));
    return layOutRows(above!, below!, 2, 'start');
  }
  const [left, right] = [from, to].map((text) => wrapText(text, (width - BETWEEN) / 2 - 2, SIZE));
  const base = { top: HEIGHT, size: SIZE };
  return {
    top: 0,
    height: HEIGHT + Math.max(lettersHeight(left!, SIZE), lettersHeight(right!, SIZE)),
    letters: [
      { ...base, lines: left!, x: 2, anchor: 'start' },
      { ...base, lines: right!, x: width - 2, anchor: 'end' },
    ],
  };
}

function layOutRows(
  above: readonly string[],
  below: readonly string[],
  x: number,
  anchor: Lettering['anchor'],
): Words {
  const top = lettersHeight(above, SIZE);
  const foot = top + HEIGHT;
  const base = { x, anchor, size: SIZE };
  return {
    top,
    height: foot + lettersHeight(below, SIZE),
    letters: [
      { ...base, lines: above, top: 0 },
      { ...base, lines: below, top: foot },
    ],
  };
}

function drawAlong(pen: Pen, { from, to }: Datum, width: number): readonly SVGElement[] {
  const [left, right] = [22, width - 22];
  const end = (name: string, x: number, block: number) =>
    CENTRE.test(name)
      ? drawCentre(pen, x, FOOT / 2)
      : [...drawBlock(pen, { x: block, y: 2, width: 18, height: FOOT - 2 }), edge(pen, x, 2, FOOT)];
  return [
    ...end(from, left, left - 18),
    ...end(to!, right, right),
    drawThin(pen, line(left, FOOT + 2, left, LEVEL + 5) + line(right, FOOT + 2, right, LEVEL + 5)),
    ...drawMeasure(pen, [left, LEVEL], [right, LEVEL], 'right'),
  ];
}

/** The face that it is taken from is on the left. */
function drawStep(
  pen: Pen,
  { from, to }: Datum,
  width: number,
  fromY: number,
  toY: number,
): readonly SVGElement[] {
  const [left, middle, right] = [0.36 * width, 0.5 * width, 0.64 * width];
  const end = (name: string, y: number, x: number, isLeft: boolean) => {
    if (CENTRE.test(name)) return drawCentre(pen, x + (isLeft ? -14 : 14), y);
    const block = { x: isLeft ? 4 : x, y, width: width - 4 - right, height: HEIGHT - 1 - y };
    return [
      ...drawBlock(pen, { ...block, width: isLeft ? x - 4 : block.width }),
      level(pen, y, block.x, isLeft ? x : width - 4),
    ];
  };
  return [
    ...end(from, fromY, left, true),
    ...end(to!, toY, right, false),
    drawThin(pen, line(left + 3, fromY, middle + 5, fromY) + line(middle - 5, toY, right - 3, toY)),
    ...drawMeasure(pen, [middle, fromY], [middle, toY], toY > fromY ? 'down' : 'up'),
  ];
}

function drawSlope(pen: Pen, _: Datum, width: number): readonly SVGElement[] {
  const [x, y] = [16, HEIGHT - 6];
  const reach = width - 2 * x;
  const turn = 0.22;
  const at = (radius: number) =>
    [x + radius * Math.cos(turn), y - radius * Math.sin(turn)] as const;
  const [endX, endY] = at(reach);
  const arc = 0.7 * reach;
  const [tipX, tipY] = at(arc);
  return [
    createElement(pen, 'path', {
      d: line(x, y, x + reach, y),
      stroke: pen.inks.soft,
      'stroke-width': 0.9,
      'stroke-dasharray': CENTRE_LINE,
    }),
    createElement(pen, 'path', {
      d: line(x, y, endX, endY),
      stroke: pen.inks.ink,
      'stroke-width': 1.8,
    }),
    createElement(pen, 'path', {
      d: `M${x + arc} ${y}A${arc} ${arc} 0 0 0 ${tipX.toFixed(2)} ${tipY.toFixed(2)}`,
      fill: 'none',
      stroke: pen.inks.set,
      'stroke-width': 1.2,
    }),
    createElement(pen, 'path', { d: arrowhead(tipX, tipY, 'up', 7), fill: pen.inks.set }),
    drawOrigin(pen, x + arc, y),
  ];
}

const HALF = 24;

function drawAcross(pen: Pen, _: Datum, width: number): readonly SVGElement[] {
  const [left, right] = [width / 2 - HALF, width / 2 + HALF];
  const part = { x: left, y: 2, width: 2 * HALF, height: FOOT - 2 };
  return [
    ...drawBlock(pen, part),
    createElement(pen, 'rect', { ...part, fill: 'none', stroke: pen.inks.ink }),
    drawThin(pen, line(left, FOOT + 2, left, LEVEL + 5) + line(right, FOOT + 2, right, LEVEL + 5)),
    createElement(pen, 'path', {
      d: line(left - 20, LEVEL, left, LEVEL) + line(right, LEVEL, right + 20, LEVEL),
      stroke: pen.inks.set,
      'stroke-width': 1.2,
    }),
    createElement(pen, 'path', {
      d: arrowhead(left, LEVEL, 'right') + arrowhead(right, LEVEL, 'left'),
      fill: pen.inks.set,
    }),
  ];
}

function drawInside(pen: Pen, _: Datum, width: number): readonly SVGElement[] {
  const [left, right] = [width / 2 - HALF, width / 2 + HALF];
  const wall = { y: 2, width: 20, height: FOOT - 2 };
  return [
    ...drawBlock(pen, { ...wall, x: left - 20 }),
    ...drawBlock(pen, { ...wall, x: right }),
    edge(pen, left, 2, FOOT),
    edge(pen, right, 2, FOOT),
    drawThin(pen, line(left, FOOT + 2, left, LEVEL + 5) + line(right, FOOT + 2, right, LEVEL + 5)),
    createElement(pen, 'path', {
      d: line(left, LEVEL, right, LEVEL),
      stroke: pen.inks.set,
      'stroke-width': 1.2,
    }),
    createElement(pen, 'path', {
      d: arrowhead(left, LEVEL, 'left') + arrowhead(right, LEVEL, 'right'),
      fill: pen.inks.set,
    }),
  ];
}

/** Twelve hours, the plunger at the first of them, and the way round. */
function drawRound(pen: Pen, _: Datum, width: number): readonly SVGElement[] {
  const [x, y, radius] = [width / 2, HEIGHT / 2, 18];
  const at = (turn: number, reach: number) =>
    [x + reach * Math.sin(turn), y - reach * Math.cos(turn)] as const;
  const hours = Array.from({ length: 12 }, (_, i) => (i * Math.PI) / 6);
  const [tipX, tipY] = at(1.9, radius - 7);
  return [
    createElement(pen, 'circle', {
      cx: x,
      cy: y,
      r: radius,
      fill: 'none',
      stroke: pen.inks.ink,
      'stroke-width': 1.6,
    }),
    drawThin(pen, hours.map((turn) => line(...at(turn, radius - 3), ...at(turn, radius))).join('')),
    createElement(pen, 'path', {
      d: line(x, y, ...at(0, radius)),
      stroke: pen.inks.set,
      'stroke-width': 1.2,
    }),
    createElement(pen, 'path', {
      d: `M${at(0.3, radius - 7)
        .map((each) => each.toFixed(2))
        .join(' ')}A${radius - 7} ${radius - 7} 0 0 1 ${tipX.toFixed(2)} ${tipY.toFixed(2)}`,
      fill: 'none',
      stroke: pen.inks.set,
      'stroke-width': 1.2,
    }),
    createElement(pen, 'path', {
      d: arrowhead(tipX - 1, tipY + 3, 'down', 7),
      fill: pen.inks.set,
    }),
    drawOrigin(pen, ...at(0, radius)),
  ];
}

/** A disc from its edge on its axis, a dial against its face. */
function drawRunout(pen: Pen, _: Datum, width: number): readonly SVGElement[] {
  const x = width / 2 - 14;
  const dial = { cx: x + 42, cy: 11, r: 8 };
  return [
    ...drawBlock(pen, { x: x - 10, y: 1, width: 10, height: HEIGHT - 2 }),
    edge(pen, x, 1, HEIGHT - 1),
    createElement(pen, 'path', {
      d: line(x - 30, HEIGHT / 2, x + 24, HEIGHT / 2),
      stroke: pen.inks.soft,
      'stroke-width': 0.9,
      'stroke-dasharray': CENTRE_LINE,
    }),
    createElement(pen, 'path', {
      d: line(x, dial.cy, dial.cx - dial.r, dial.cy) + line(dial.cx, dial.cy, dial.cx + 4, 7),
      stroke: pen.inks.set,
      'stroke-width': 1.4,
    }),
    createElement(pen, 'circle', { ...dial, fill: 'none', stroke: pen.inks.set }),
    createElement(pen, 'path', {
      d: `M${x + 12} ${HEIGHT / 2 + 7}A6 8 0 1 0 ${x + 12} ${HEIGHT / 2 - 7}`,
      fill: 'none',
      stroke: pen.inks.ink,
    }),
    createElement(pen, 'path', {
      d: arrowhead(x + 14, HEIGHT / 2 + 7, 'right', 6),
      fill: pen.inks.ink,
    }),
  ];
}

/** Cut metal, without an outline: only the face that is measured has one. */
function drawBlock(pen: Pen, area: Rectangle): readonly SVGElement[] {
  return [
    createElement(pen, 'path', { d: hatch(area, 5), stroke: pen.inks.soft, 'stroke-width': 0.7 }),
  ];
}

function edge(pen: Pen, x: number, top: number, foot: number): SVGElement {
  return drawFace(pen, line(x, top, x, foot));
}

function level(pen: Pen, y: number, from: number, to: number): SVGElement {
  return drawFace(pen, line(from, y, to, y));
}

function drawFace(pen: Pen, d: string): SVGElement {
  return createElement(pen, 'path', {
    d,
    stroke: pen.inks.ink,
    'stroke-width': 1.8,
    'data-part': 'face',
  });
}

function drawThin(pen: Pen, d: string): SVGElement {
  return createElement(pen, 'path', { d, stroke: pen.inks.soft, 'stroke-width': 0.8 });
}

function drawCentre(pen: Pen, x: number, y: number): readonly SVGElement[] {
  return [
    createElement(pen, 'circle', {
      cx: x,
      cy: y,
      r: 5.5,
      fill: pen.inks.paper,
      stroke: pen.inks.ink,
      'stroke-width': 1.4,
      'data-part': 'centre',
    }),
    drawThin(pen, line(x - 10, y, x + 10, y) + line(x, y - 10, x, y + 10)),
  ];
}

type Point = readonly [x: number, y: number];

/** From a circle to an arrow (ISO 129-1, origin of a dimension). */
function drawMeasure(
  pen: Pen,
  from: Point,
  to: Point,
  heading: 'right' | 'down' | 'up',
): readonly SVGElement[] {
  return [
    createElement(pen, 'path', {
      d: line(...from, ...to),
      stroke: pen.inks.set,
      'stroke-width': 1.2,
      'data-part': 'measure',
    }),
    createElement(pen, 'path', { d: arrowhead(...to, heading, ARROW), fill: pen.inks.set }),
    drawOrigin(pen, ...from),
  ];
}

function drawOrigin(pen: Pen, x: number, y: number): SVGElement {
  return createElement(pen, 'circle', {
    cx: x,
    cy: y,
    r: 2.6,
    fill: pen.inks.paper,
    stroke: pen.inks.set,
    'stroke-width': 1.2,
  });
}
