import type { DrawingData, DrawingDeclaration, DrawingPaper } from '../declaration.ts';
import { drawDimensions, type LevelDimension, layOutDimensions } from '../dimension-rows.ts';
import { PLANS } from '../drawing-plans.ts';
import { drawFlags, type Flag, layOutFlags } from '../flags.ts';
import { createLettering, lettersHeight } from '../lettering.ts';
import { hatch, line, polygon } from '../shapes.ts';
import { createElement, createPen, createRoot, formatAttribute, type Pen } from '../svg.ts';
import { wrapText } from '../wrap-text.ts';
import { createDriveshaftScene, type DriveshaftScene } from './driveshaft-scene.ts';

const SIZE = 13;
/** Room beside the shaft for arrows that point at a short dimension from outside. */
const MARGIN = 20;
/** ISO 128: long dash and dot, a centre line; short dashes, a hidden edge. */
const CENTRE_LINE = '12 3 3 3';
const HIDDEN = '5 3';
/** Heights of the parts, as shares of the tube's diameter. */
const TAIL = 0.8;
const BARREL = 0.36;
const EARS = 0.46;
const CROSS = 0.17;

/** Side view of a driveshaft in its place between gearbox and axle. */
export const DRIVESHAFT: DrawingDeclaration = {
  ...PLANS.driveshaft,
  draw,
  describe,
};

/** From metres to px, one scale both ways; `y` counts from the top of the figure, `up` from the axis. */
interface Frame {
  readonly scale: number;
  readonly height: number;
  readonly x: (along: number) => number;
  readonly y: (up: number) => number;
}

function createFrame({ left, right, diameter }: DriveshaftScene, width: number): Frame {
  const scale = (width - 2 * MARGIN) / (right - left);
  const middle = TAIL * diameter * scale + 6;
  return {
    scale,
    height: 2 * middle,
    x: (along) => MARGIN + (along - left) * scale,
    y: (up) => middle - up * scale,
  };
}

function draw(data: DrawingData, paper: DrawingPaper): SVGElement {
  const pen = createPen(paper);
  const scene = createDriveshaftScene(data);
  const frame = createFrame(scene, paper.width);
  const flags = layOutFlags(labelsOf(data, scene, frame), paper.width);
  const rows = layOutDimensions(dimensionsOf(data, scene, frame, pen), paper.width);
  const note = wrapText(noteOf(scene), paper.width - 4, SIZE);
  const rowsTop = flags.height + frame.height + 4;
  const noteTop = rowsTop + rows.height + 4;
  const root = createRoot(pen, paper, {
    title: data.title,
    description: describe(data),
    width: paper.width,
    height: Math.ceil(noteTop + lettersHeight(note, SIZE)),
  });
  root.append(
    createElement(pen, 'g', { transform: `translate(0 ${formatAttribute(flags.height)})` }, [
      ...drawTail(pen, scene, frame),
      ...drawTube(pen, scene, frame),
      ...drawJoints(pen, scene, frame),
      drawAxis(pen, scene, frame),
    ]),
    ...drawDimensions(pen, rows, flags.height, rowsTop),
    ...drawFlags(pen, flags, flags.height),
    ...createLettering(pen, { lines: note, x: 2, top: noteTop, anchor: 'start', size: SIZE }),
  );
  return root;
}

/** The tail in section, broken off to the left; the slip yoke in it, and where it would stop. */
function drawTail(pen: Pen, scene: DriveshaftScene, frame: Frame): readonly SVGElement[] {
  const { diameter, left, seal, yokeEnd, stop } = scene;
  const [from, to] = [frame.x(left), frame.x(Math.max(seal, left))];
  const [outside, bore] = [TAIL * diameter, BARREL * diameter * 1.12];
  const walls = [frame.y(outside), frame.y(-bore)].map((y) => ({
    x: from,
    y,
    width: to - from,
    height: (outside - bore) * frame.scale,
  }));
  return [
    ...walls.flatMap((wall) => [
      createElement(pen, 'rect', { ...wall, fill: pen.inks.paper, stroke: pen.inks.soft }),
      createElement(pen, 'path', { d: hatch(wall), stroke: pen.inks.soft, 'stroke-width': 0.7 }),
    ]),
    drawBarrel(pen, scene, frame),
    drawStop(pen, stop, stop <= yokeEnd, frame, bore),
  ];
}

function drawBarrel(pen: Pen, { diameter, yokeEnd }: DriveshaftScene, frame: Frame): SVGElement {
  const end = -EARS * diameter;
  const [from, to] = [Math.min(yokeEnd, end), Math.max(yokeEnd, end)];
  return createElement(pen, 'rect', {
    x: frame.x(from),
    y: frame.y(BARREL * diameter),
    width: (to - from) * frame.scale,
    height: 2 * BARREL * diameter * frame.scale,
    fill: pen.inks.setWash,
    stroke: pen.inks.set,
    'stroke-width': 1.4,
    'data-part': 'slip-yoke',
    'data-from': frame.x(yokeEnd),
  });
}

function drawStop(pen: Pen, stop: number, isFree: boolean, frame: Frame, bore: number): SVGElement {
  return createElement(pen, 'path', {
    d: line(frame.x(stop), frame.y(bore), frame.x(stop), frame.y(-bore)),
    stroke: isFree ? pen.inks.ink : pen.inks.warn,
    'stroke-width': 1.6,
    'stroke-dasharray': HIDDEN,
    'data-part': 'stop',
  });
}

function drawTube(pen: Pen, scene: DriveshaftScene, frame: Frame): readonly SVGElement[] {
  const { diameter, tube, length: rear } = scene;
  const half = diameter / 2;
  const body = createElement(pen, 'rect', {
    x: frame.x(tube[0]),
    y: frame.y(half),
    width: (tube[1] - tube[0]) * frame.scale,
    height: diameter * frame.scale,
    fill: pen.inks.paper,
    stroke: pen.inks.ink,
    'stroke-width': 1.6,
    'stroke-dasharray': isAssumed(scene, 'tube_length') ? HIDDEN : undefined,
    'data-part': 'tube',
  });
  return [
    drawTaper(pen, tube[0], 0, half, diameter, frame),
    drawTaper(pen, tube[1], rear, half, diameter, frame),
    body,
  ];
}

/** Tube yoke: from the weld to the ears that hold the cross. */
function drawTaper(
  pen: Pen,
  weld: number,
  centre: number,
  half: number,
  diameter: number,
  frame: Frame,
): SVGElement {
  const ear = EARS * diameter * 0.8;
  const [x1, x2] = [frame.x(weld), frame.x(centre)];
  return createElement(pen, 'path', {
    d: polygon([
      [x1, frame.y(half)],
      [x2, frame.y(ear)],
      [x2, frame.y(-ear)],
      [x1, frame.y(-half)],
    ]),
    fill: pen.inks.paper,
    stroke: pen.inks.ink,
    'stroke-width': 1.4,
  });
}

/** Ears of slip yoke and pinion, and the crosses on their centres. */
function drawJoints(pen: Pen, scene: DriveshaftScene, frame: Frame): readonly SVGElement[] {
  const { diameter, length: rear, right } = scene;
  const flange = createElement(pen, 'path', {
    d: polygon([
      [frame.x(rear), frame.y(EARS * diameter)],
      [frame.x(rear + 0.6 * diameter), frame.y(EARS * diameter)],
      [frame.x(rear + 0.6 * diameter), frame.y(BARREL * diameter)],
      [frame.x(right), frame.y(BARREL * diameter)],
      [frame.x(right), frame.y(-BARREL * diameter)],
      [frame.x(rear + 0.6 * diameter), frame.y(-BARREL * diameter)],
      [frame.x(rear + 0.6 * diameter), frame.y(-EARS * diameter)],
      [frame.x(rear), frame.y(-EARS * diameter)],
    ]),
    fill: pen.inks.paper,
    stroke: pen.inks.soft,
    'stroke-width': 1.2,
    'data-part': 'pinion',
  });
  const ears = createElement(pen, 'rect', {
    x: frame.x(-EARS * diameter),
    y: frame.y(EARS * diameter),
    width: EARS * diameter * frame.scale,
    height: 2 * EARS * diameter * frame.scale,
    fill: pen.inks.setWash,
    stroke: pen.inks.set,
    'stroke-width': 1.4,
  });
  return [flange, ears, ...[0, rear].flatMap((at) => drawCross(pen, at, diameter, frame))];
}

function drawCross(pen: Pen, at: number, diameter: number, frame: Frame): readonly SVGElement[] {
  const [x, reach] = [frame.x(at), 0.72 * diameter];
  return [
    createElement(pen, 'circle', {
      cx: x,
      cy: frame.y(0),
      r: CROSS * diameter * frame.scale,
      fill: pen.inks.paper,
      stroke: pen.inks.ink,
      'stroke-width': 1.4,
      'data-part': 'joint',
    }),
    createElement(pen, 'path', {
      d: line(x, frame.y(reach), x, frame.y(-reach)),
      stroke: pen.inks.soft,
      'stroke-width': 0.8,
      'stroke-dasharray': CENTRE_LINE,
    }),
  ];
}

function drawAxis(pen: Pen, { left, right }: DriveshaftScene, frame: Frame): SVGElement {
  return createElement(pen, 'path', {
    d: line(frame.x(left) - 8, frame.y(0), frame.x(right) + 8, frame.y(0)),
    stroke: pen.inks.soft,
    'stroke-width': 0.8,
    'stroke-dasharray': CENTRE_LINE,
    'data-part': 'axis',
  });
}

function isAssumed({ assumed }: DriveshaftScene, slot: string): boolean {
  return assumed.includes(slot);
}

function labelsOf(data: DrawingData, scene: DriveshaftScene, frame: Frame): readonly Flag[] {
  const { diameter, tube, left, seal, length: rear } = scene;
  const across = isAssumed(scene, 'tube_diameter') ? '?' : hold(data.show('tube_diameter'));
  return [
    { x: frame.x((left + seal) / 2), y: frame.y(0.6 * TAIL * diameter), text: 'Tail' },
    {
      x: frame.x((tube[0] + tube[1]) / 2),
      y: frame.y(0.3 * diameter),
      text: `Tube Ø\u00a0${across}`,
    },
    { x: frame.x(rear + 0.9 * diameter), y: frame.y(0.2 * diameter), text: 'Pinion' },
  ];
}

/** A number is not parted from its unit. */
function hold(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}

/** The shorter a dimension, the nearer it stands to the shaft. */
function dimensionsOf(
  data: DrawingData,
  scene: DriveshaftScene,
  frame: Frame,
  pen: Pen,
): readonly LevelDimension[] {
  const { seal, yokeEnd, stop, tube, length: rear } = scene;
  const isPast = stop > yokeEnd;
  const spans = [
    ['set_back', stop, yokeEnd, isPast ? 'past its stop' : 'before its stop', BARREL, BARREL],
    ['engaged', yokeEnd, seal, 'of spline engaged', BARREL, TAIL],
    ['seal_to_joint', seal, 0, 'seal to joint centre', TAIL, EARS],
    ['tube_length', tube[0], tube[1], 'of bare tube', 0.5, 0.5],
    ['length', 0, rear, 'joint centre to joint centre', EARS, EARS],
  ] as const;
  const foot = (share: number): number => frame.y(-share * scene.diameter);
  return spans
    .filter(([slot]) => data.number(slot) !== undefined && !isAssumed(scene, slot))
    .map(([slot, from, to, words, near, far]) => {
      const lead = hold(data.showAs(slot, Math.abs(data.number(slot)!)));
      return {
        from: frame.x(from),
        to: frame.x(to),
        fromY: foot(near),
        toY: foot(far),
        text: `${lead} ${words}`,
        lead,
        part: slot,
        ...colourOf(slot, isPast, pen),
      };
    });
}

function colourOf(slot: string, isPast: boolean, pen: Pen): { readonly colour?: string } {
  if (slot === 'set_back' && isPast) return { colour: pen.inks.warn };
  return slot === 'length' ? { colour: pen.inks.set } : {};
}

const SAID: Readonly<Record<string, string>> = {
  length: 'length',
  tube_diameter: 'tube diameter',
  tube_length: 'bare tube',
  front_weld: 'front weld',
  seal_to_joint: 'seal to joint',
  engaged: 'engaged spline',
  set_back: 'way to the stop',
};

function noteOf({ assumed }: DriveshaftScene): string {
  if (assumed.length === 0) return '';
  const what = assumed.map((slot) => SAID[slot]).join(', ');
  return `Not to scale where not known or not possible: ${what}.`;
}

function describe(data: DrawingData): string {
  const isPast = (data.number('set_back') ?? 0) < 0;
  const told = [
    `${say(data, 'length')} from joint centre to joint centre`,
    `tube ${say(data, 'tube_diameter')} in diameter`,
    ...also(data, 'tube_length', 'of bare tube between the welds'),
    ...also(data, 'seal_to_joint', 'from the seal to the front joint'),
    ...also(data, 'engaged', 'of spline engaged'),
    ...also(data, 'set_back', isPast ? 'past the slip yoke’s stop' : 'before the slip yoke’s stop'),
  ];
  return `Side view of the shaft, gearbox to the left. ${told.join('; ')}.`;
}

function also(data: DrawingData, slot: string, words: string): readonly string[] {
  return Number.isFinite(data.number(slot)) ? [`${say(data, slot)} ${words}`] : [];
}

function say(data: DrawingData, slot: string): string {
  const value = data.number(slot);
  return value !== undefined && Number.isFinite(value) ? data.showAs(slot, Math.abs(value)) : '?';
}
