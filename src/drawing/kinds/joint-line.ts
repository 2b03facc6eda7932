import type { DrawingData, DrawingDeclaration, DrawingPaper } from '../declaration.ts';
import { drawDimensions, layOutDimensions } from '../dimension-rows.ts';
import { PLANS } from '../drawing-plans.ts';
import { drawFlags, type Flag, layOutFlags } from '../flags.ts';
import { createLettering, lettersHeight } from '../lettering.ts';
import { line } from '../shapes.ts';
import { createElement, createPen, createRoot, formatAttribute, type Pen } from '../svg.ts';
import { wrapText } from '../wrap-text.ts';

/** Gearbox, shaft and pinion from the side, with the angles of both joints. */
export const JOINT_LINE: DrawingDeclaration = {
  ...PLANS.joint_line,
  draw,
  describe,
};

type Point = readonly [rearward: number, up: number];

/** Places in lengths of the shaft from the front joint; the pinion's joint stays where it is. */
interface Scene {
  readonly nose: Point;
  readonly front: Point;
  readonly rear: Point;
  readonly axle: Point;
  readonly assumed: readonly string[];
}

/** Gearbox and pinion are drawn this long, for each length of the shaft. */
const GEARBOX = 0.45;
const PINION = 0.2;
/** Steeper than this no driveline lies, and a drawing of it would say nothing. */
const STEEPEST = (35 * Math.PI) / 180;
const USUAL = { gearbox_slope: 0.05, shaft_slope: 0.03, pinion_slope: 0.05 } as const;
const NAMES = {
  gearbox_slope: 'slope of the gearbox',
  shaft_slope: 'slope of the shaft',
  pinion_slope: 'slope of the pinion',
} as const;

function createScene(data: DrawingData): Scene {
  const assumed: string[] = [];
  const take = (slot: keyof typeof USUAL): number => {
    const value = data.number(slot);
    if (isDrawable(value)) return value;
    assumed.push(NAMES[slot]);
    return USUAL[slot];
  };
  const rear: Point = [1, 0];
  const front = behind(rear, take('shaft_slope'), -1);
  const nose = behind(front, take('gearbox_slope'), -GEARBOX);
  const axle = behind(rear, take('pinion_slope'), PINION);
  return { nose, front, rear, axle, assumed };
}

function isDrawable(slope: number | undefined): slope is number {
  return slope !== undefined && Math.abs(slope) <= STEEPEST;
}

/** A point further along a line that slopes down to the rear. */
function behind([x, y]: Point, slope: number, length: number): Point {
  return [x + length * Math.cos(slope), y - length * Math.sin(slope)];
}

function createBefore(data: DrawingData, { rear }: Scene): readonly Point[] {
  const [gearbox, shaft] = [data.number('before_gearbox_slope'), data.number('before_shaft_slope')];
  if (!isDrawable(gearbox) || !isDrawable(shaft)) return [];
  const front = behind(rear, shaft, -1);
  return [behind(front, gearbox, -GEARBOX), front, rear];
}

interface Frame {
  /** How many times too large heights are drawn. */
  readonly stretch: number;
  readonly scale: number;
  readonly height: number;
  readonly x: (along: number) => number;
  readonly y: (up: number) => number;
}

const STRETCHES = [1, 2, 3, 4, 5, 8, 10] as const;
/** Share of the width that the heights may take when they are stretched. */
const TALL = 0.16;
const MARGIN = 14;
/** Half the thickness of the gearbox and of the axle's housing, in px. */
const HALF = 13;

function createFrame(points: readonly Point[], width: number): Frame {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [foot, top] = [Math.min(...ys), Math.max(...ys)];
  const scale = (width - 2 * MARGIN - HALF) / (right - left);
  const tall = (top - foot) * scale;
  const stretch = STRETCHES.findLast((times) => tall * times <= TALL * width) ?? 1;
  return {
    stretch,
    scale,
    height: tall * stretch + 2 * HALF + 6,
    x: (along) => MARGIN + (along - left) * scale,
    y: (up) => HALF + 3 + (top - up) * scale * stretch,
  };
}

function draw(data: DrawingData, paper: DrawingPaper): SVGElement {
  const pen = createPen(paper);
  const scene = createScene(data);
  const before = createBefore(data, scene);
  const points = [scene.nose, scene.front, scene.rear, scene.axle];
  const frame = createFrame([...points, ...before], paper.width);
  const flags = layOutFlags(labelsOf(data, scene, frame, pen), paper.width);
  const rows = layOutDimensions([lengthOf(data, scene, frame)], paper.width);
  const notes = notesOf(scene, before, frame, paper.width);
  const rowsTop = flags.height + frame.height;
  const notesTop = rowsTop + rows.height + 4;
  const root = createRoot(pen, paper, {
    title: data.title,
    description: describe(data),
    width: paper.width,
    height: Math.ceil(notesTop + lettersHeight(notes, 13)),
  });
  const transform = `translate(0 ${formatAttribute(flags.height)})`;
  root.append(
    createElement(pen, 'g', { transform }, [
      ...drawLevels(pen, scene, frame),
      ...drawBefore(pen, before, frame),
      ...drawParts(pen, scene, frame),
    ]),
    ...drawDimensions(pen, rows, flags.height, rowsTop),
    ...drawFlags(pen, flags, flags.height),
    ...createLettering(pen, {
      lines: notes,
      x: 2,
      top: notesTop,
      anchor: 'start',
      size: 13,
      colour: pen.inks.soft,
    }),
  );
  return root;
}

/** Level lines through the joints, against which slopes are seen. */
function drawLevels(pen: Pen, { front, rear }: Scene, frame: Frame): readonly SVGElement[] {
  const reach = 0.16;
  return [front, rear].map(([x, y]) =>
    createElement(pen, 'path', {
      d: line(frame.x(x - reach), frame.y(y), frame.x(x + reach), frame.y(y)),
      stroke: pen.inks.soft,
      'stroke-width': 0.8,
      'stroke-dasharray': '9 3 2 3',
    }),
  );
}

function drawBefore(pen: Pen, points: readonly Point[], frame: Frame): readonly SVGElement[] {
  if (points.length === 0) return [];
  const place = points.map(
    ([x, y]) => `${formatAttribute(frame.x(x))} ${formatAttribute(frame.y(y))}`,
  );
  return [
    createElement(pen, 'path', {
      d: `M${place.join('L')}`,
      stroke: pen.inks.soft,
      'stroke-width': 1.2,
      'stroke-dasharray': '11 3 2 3 2 3',
      fill: 'none',
      'data-part': 'before',
    }),
  ];
}

function drawParts(pen: Pen, scene: Scene, frame: Frame): readonly SVGElement[] {
  const { nose, front, rear, axle } = scene;
  return [
    drawBar(pen, frame, nose, front, [HALF, 6], 'gearbox'),
    drawBar(pen, frame, front, rear, [4, 4], 'shaft'),
    drawBar(pen, frame, rear, axle, [5, 9], 'pinion'),
    createElement(pen, 'circle', {
      cx: frame.x(axle[0]),
      cy: frame.y(axle[1]),
      r: HALF,
      fill: pen.inks.paper,
      stroke: pen.inks.ink,
      'stroke-width': 1.4,
    }),
    ...[front, rear].map((joint) => drawJoint(pen, frame, joint)),
  ];
}

/** A part between two points, so thick at either end, with its centre line. */
function drawBar(
  pen: Pen,
  frame: Frame,
  from: Point,
  to: Point,
  [thickFrom, thickTo]: readonly [number, number],
  part: string,
): SVGElement {
  const [x1, y1, x2, y2] = [frame.x(from[0]), frame.y(from[1]), frame.x(to[0]), frame.y(to[1])];
  const edges = [
    [x1, y1 - thickFrom],
    [x2, y2 - thickTo],
    [x2, y2 + thickTo],
    [x1, y1 + thickFrom],
  ].map((point) => point.map(formatAttribute).join(' '));
  return createElement(pen, 'g', {}, [
    createElement(pen, 'path', {
      d: `M${edges.join('L')}Z`,
      fill: part === 'shaft' ? pen.inks.setWash : pen.inks.paper,
      stroke: pen.inks.ink,
      'stroke-width': 1.4,
    }),
    createElement(pen, 'path', {
      d: line(x1, y1, x2, y2),
      stroke: pen.inks.ink,
      'stroke-width': 0.9,
      'stroke-dasharray': '9 3 2 3',
      'data-part': part,
      'data-stretch': frame.stretch,
    }),
  ]);
}

function drawJoint(pen: Pen, frame: Frame, [x, y]: Point): SVGElement {
  return createElement(pen, 'circle', {
    cx: frame.x(x),
    cy: frame.y(y),
    r: 6,
    fill: pen.inks.paper,
    stroke: pen.inks.ink,
    'stroke-width': 1.6,
    'data-part': 'joint',
  });
}

function labelsOf(
  data: DrawingData,
  { nose, front, rear, axle }: Scene,
  frame: Frame,
  pen: Pen,
): readonly Flag[] {
  const middle = ([x1, y1]: Point, [x2, y2]: Point) =>
    ({ x: frame.x((x1 + x2) / 2), y: frame.y((y1 + y2) / 2) }) as const;
  const slope = (slot: string, word: string) => say(data, slot, word);
  const joint = (slot: string, word: string, [x, y]: Point): Flag[] =>
    data.number(slot) === undefined
      ? []
      : [{ x: frame.x(x), y: frame.y(y), ...say(data, slot, word), colour: pen.inks.set }];
  return [
    { ...middle(nose, front), ...slope('gearbox_slope', 'gearbox') },
    ...joint('front_angle', 'front joint', front),
    { ...middle(front, rear), ...slope('shaft_slope', 'shaft') },
    ...joint('rear_angle', 'rear joint', rear),
    { x: frame.x(axle[0]), y: frame.y(axle[1]), ...slope('pinion_slope', 'pinion') },
  ];
}

function say(data: DrawingData, slot: string, word: string) {
  const lead = data.show(slot).replaceAll(' ', '\u00a0');
  return { lead, text: `${lead} ${word}` };
}

function lengthOf(data: DrawingData, { front, rear }: Scene, frame: Frame) {
  return {
    ...say(data, 'shaft_length', 'joint to joint'),
    from: frame.x(front[0]),
    to: frame.x(rear[0]),
    fromY: frame.y(front[1]) + 6,
    toY: frame.y(rear[1]) + 6,
    part: 'length',
  };
}

function notesOf(
  { assumed }: Scene,
  before: readonly Point[],
  { stretch }: Frame,
  width: number,
): readonly string[] {
  const notes = [
    stretch === 1
      ? ''
      : `Heights are drawn ${stretch} times too large, so that slopes can be seen.`,
    before.length === 0 ? '' : 'The thin line is how it lay before.',
    assumed.length === 0 ? '' : `Only assumed: ${assumed.join(', ')}.`,
  ];
  return wrapText(notes.filter(Boolean).join(' '), width - 4, 13);
}

function describe(data: DrawingData): string {
  const joint = (slot: string, word: string) =>
    data.number(slot) === undefined ? '' : ` The ${word} joint is bent by ${data.show(slot)}.`;
  return (
    `Side view, the front at the left. Slopes, down to the rear: gearbox ${data.show('gearbox_slope')}, ` +
    `shaft ${data.show('shaft_slope')}, pinion ${data.show('pinion_slope')}. ` +
    `The shaft is ${data.show('shaft_length')} long.` +
    joint('front_angle', 'front') +
    joint('rear_angle', 'rear')
  );
}
