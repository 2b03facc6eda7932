import type { DrawingData, DrawingDeclaration, DrawingPaper } from '../declaration.ts';
import { drawDimensions, type LevelDimension, layOutDimensions } from '../dimension-rows.ts';
import { PLANS } from '../drawing-plans.ts';
import { drawFlags, type Flag, layOutFlags } from '../flags.ts';
import { createLettering, lettersHeight } from '../lettering.ts';
import { arrowhead, hatch, line } from '../shapes.ts';
import { createElement, createPen, createRoot, formatAttribute, type Pen } from '../svg.ts';
import { textWidth } from '../text-width.ts';
import { wrapText } from '../wrap-text.ts';

/** Side view of an engine that tilts about its mounts while its tail is let down. */
export const TAIL_DROP: DrawingDeclaration = {
  ...PLANS.tail_drop,
  draw,
  describe,
};

type Point = readonly [rearward: number, up: number];

/** The figure in metres about the engine mounts. */
interface Scene {
  readonly tail: Point;
  readonly corner: Point;
  readonly gap: number;
  readonly tilt: number;
  /** Words for the values that are not known and only assumed. */
  readonly assumed: readonly string[];
}

/** Usual proportions, for what is not known yet, in lengths from the mounts to the tail. */
const USUAL = {
  mount_to_tail: 1,
  tail_below: 0.02,
  head_reach: 0.25,
  head_height: 0.36,
  bulkhead_gap: 0.04,
  drop: 0.05,
} as const;
const NAMES: Readonly<Record<keyof typeof USUAL, string>> = {
  mount_to_tail: 'mounts to tail',
  tail_below: 'height of the tail',
  head_reach: 'reach of the head',
  head_height: 'height of the head',
  bulkhead_gap: 'gap to the bulkhead',
  drop: 'drop',
};

function createScene(data: DrawingData): Scene {
  const known = data.number('mount_to_tail');
  const unit = known !== undefined && known > 0 ? known : 1;
  const assumed: string[] = [];
  const take = (slot: keyof typeof USUAL, least: number): number => {
    const value = data.number(slot);
    if (value !== undefined && Number.isFinite(value) && value / unit >= least && value / unit < 5)
      return value;
    assumed.push(NAMES[slot]);
    return USUAL[slot] * unit;
  };
  const reach = take('mount_to_tail', 1e-9);
  const below = take('tail_below', -1);
  const corner: Point = [take('head_reach', -0.5), take('head_height', 0.02)];
  const gap = take('bulkhead_gap', 0);
  const drop = take('drop', -0.5);
  return { tail: [reach, -below], corner, gap, tilt: tiltFor(reach, below, drop), assumed };
}

/** The turn about the mounts that lets the tail down so far; a right angle where none does. */
export function tiltFor(reach: number, below: number, drop: number): number {
  const sine = (drop + below) / Math.hypot(reach, below);
  return Math.asin(Math.max(-1, Math.min(1, sine))) - Math.atan2(below, reach);
}

/** A point of the engine after the tail has come down by a turn. */
export function turnPoint([x, y]: Point, tilt: number): Point {
  const [cos, sin] = [Math.cos(tilt), Math.sin(tilt)];
  return [x * cos + y * sin, y * cos - x * sin];
}

/** Outline of engine and gearbox: sump, block, head with its rear corner, bell, gearbox, tail. */
function outlineOf({ tail, corner }: Scene): readonly Point[] {
  const [reach, height] = corner;
  const deep = -0.14 * tail[0];
  const front = Math.min(-0.24 * tail[0], reach - 0.3 * tail[0]);
  const face = Math.min(reach + 0.02 * tail[0], 0.6 * tail[0]);
  const thick = 0.05 * tail[0];
  const bell = face + 0.14 * tail[0];
  return [
    [front, height * 0.92],
    [reach, height],
    [face, height * 0.45],
    [bell, tail[1] + 2.2 * thick],
    [tail[0] - 2 * thick, tail[1] + thick],
    [tail[0], tail[1] + thick * 0.8],
    [tail[0], tail[1] - thick * 0.8],
    [tail[0] - 2 * thick, tail[1] - thick],
    [bell, tail[1] - 1.8 * thick],
    [face, deep * 0.75],
    [reach * 0.6, deep],
    [front * 0.9, deep],
  ];
}

interface Frame {
  readonly left: number;
  readonly top: number;
  readonly scale: number;
  readonly height: number;
  readonly x: (metres: number) => number;
  readonly y: (metres: number) => number;
}

const MARGIN = 8;
/** Where the bulkhead ends, as a share of the height of the point that meets it. */
const WALL_FOOT = 0.5;

/** One scale for both axes, so that the whole figure fits the width. */
function createFrame(points: readonly Point[], width: number): Frame {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [foot, top] = [Math.min(...ys), Math.max(...ys)];
  const scale = (width - 2 * MARGIN) / Math.max(right - left, 1e-9);
  return {
    left,
    top,
    scale,
    height: (top - foot) * scale,
    x: (metres) => MARGIN + (metres - left) * scale,
    y: (metres) => (top - metres) * scale,
  };
}

function draw(data: DrawingData, paper: DrawingPaper): SVGElement {
  const pen = createPen(paper);
  const scene = createScene(data);
  const before = outlineOf(scene);
  const after = before.map((point) => turnPoint(point, scene.tilt));
  const wall = scene.corner[0] + scene.gap;
  const frame = createFrame([...before, ...after, [wall + 0.06 * scene.tail[0], 0]], paper.width);
  const flags = layOutFlags(labelsOf(data, scene, frame, pen), paper.width);
  const rows = layOutDimensions(dimensionsOf(data, scene, frame), paper.width);
  const note = noteOf(scene, paper.width);
  const rowsTop = flags.height + frame.height + 4;
  const noteTop = rowsTop + rows.height + 4;
  const root = createRoot(pen, paper, {
    title: data.title,
    description: describe(data),
    width: paper.width,
    height: Math.ceil(noteTop + lettersHeight(note, 13)),
  });
  const figure = createElement(pen, 'g', {
    transform: `translate(0 ${formatAttribute(flags.height)})`,
  });
  figure.append(
    ...drawWall(pen, frame, wall, scene.corner[1]),
    drawOutline(pen, frame, after, 'lowered'),
    drawOutline(pen, frame, before, 'standing'),
    drawMount(pen, frame),
    ...drawHeight(pen, data, scene, frame),
  );
  root.append(figure, ...drawDimensions(pen, rows, flags.height, rowsTop));
  root.append(...drawFlags(pen, flags, flags.height));
  root.append(
    ...createLettering(pen, {
      lines: note,
      x: 2,
      top: noteTop,
      anchor: 'start',
      size: 13,
      colour: pen.inks.soft,
    }),
  );
  return root;
}

/** The position that is not the usual one is drawn thin, long dashes and two short (ISO 128). */
function drawOutline(
  pen: Pen,
  frame: Frame,
  points: readonly Point[],
  part: 'standing' | 'lowered',
): SVGElement {
  const place = points.map(
    ([x, y]) => `${formatAttribute(frame.x(x))} ${formatAttribute(frame.y(y))}`,
  );
  const isStanding = part === 'standing';
  return createElement(pen, 'path', {
    d: `M${place.join('L')}Z`,
    stroke: isStanding ? pen.inks.ink : pen.inks.set,
    'stroke-width': isStanding ? 1.6 : 1.2,
    'stroke-dasharray': isStanding ? undefined : '11 3 2 3 2 3',
    fill: isStanding ? 'none' : pen.inks.setWash,
    'fill-opacity': isStanding ? undefined : 0.6,
    'stroke-linejoin': 'round',
    'data-part': part,
  });
}

/** Down to where the gearbox passes under it. */
function drawWall(pen: Pen, frame: Frame, wall: number, height: number): readonly SVGElement[] {
  const x = frame.x(wall);
  const foot = frame.y(height * WALL_FOOT);
  return [
    createElement(pen, 'path', {
      d: hatch({ x, y: 0, width: 12, height: foot }),
      stroke: pen.inks.soft,
      'stroke-width': 0.9,
    }),
    createElement(pen, 'path', {
      d: line(x, 0, x, foot),
      stroke: pen.inks.ink,
      'stroke-width': 2,
      'data-part': 'bulkhead',
      'data-x': x,
    }),
  ];
}

function drawMount(pen: Pen, frame: Frame): SVGElement {
  const [x, y] = [frame.x(0), frame.y(0)];
  return createElement(pen, 'path', {
    d: `M${formatAttribute(x)} ${formatAttribute(y)}l7 12h-14Z`,
    fill: pen.inks.paper,
    stroke: pen.inks.ink,
    'stroke-width': 1.4,
    'data-part': 'mount',
    'data-x': x,
    'data-y': y,
  });
}

/** How high the point stands over the mounts; its value only where it fits beside the line. */
function drawHeight(
  pen: Pen,
  data: DrawingData,
  scene: Scene,
  frame: Frame,
): readonly SVGElement[] {
  const [x, foot, head] = [frame.x(0), frame.y(0), frame.y(scene.corner[1])];
  const text = hold(data.show('head_height'));
  const wide = textWidth(text, 13, 700) + 12;
  const isRight = frame.x(scene.corner[0]) - x > wide;
  const fits = isRight || x > wide;
  const middle = (foot + head) / 2 - 9;
  return [
    createElement(pen, 'path', {
      d: line(x, foot, x, head),
      stroke: pen.inks.ink,
      'stroke-width': 1.2,
      'data-part': 'height',
      'data-from': foot,
      'data-to': head,
    }),
    createElement(pen, 'path', {
      d: arrowhead(x, head, 'up') + arrowhead(x, foot, 'down'),
      fill: pen.inks.ink,
    }),
    ...createLettering(pen, {
      lines: fits && foot - head > 30 ? [text] : [],
      x: isRight ? x + 6 : x - 6,
      top: middle,
      anchor: isRight ? 'start' : 'end',
      size: 13,
      weight: 700,
      halo: true,
    }),
  ];
}

function labelsOf(data: DrawingData, scene: Scene, frame: Frame, pen: Pen): readonly Flag[] {
  const [cornerX, cornerY] = turnPoint(scene.corner, scene.tilt);
  const [tailX, tailY] = turnPoint(scene.tail, scene.tilt);
  const left = data.number('gap_left');
  const meets = left !== undefined && left < 0;
  const [gap, drop, limit] = ['gap_left', 'drop', 'drop_limit'].map((slot) =>
    hold(data.show(slot)),
  );
  const gapWords = meets ? 'meets the bulkhead' : `${gap} left to the bulkhead`;
  const most = data.number('drop_limit') === undefined ? '' : `, ${limit} at most`;
  return [
    {
      x: frame.x(cornerX),
      y: frame.y(cornerY),
      text: gapWords,
      lead: meets ? gapWords : gap!,
      colour: meets ? pen.inks.warn : pen.inks.set,
    },
    {
      x: frame.x(tailX),
      y: frame.y(tailY),
      text: `${drop} down${most}`,
      // The comma too, or the words behind it cut into the last bold letter.
      lead: `${drop} down${most.slice(0, 1)}`,
      colour: pen.inks.set,
    },
  ];
}

function dimensionsOf(data: DrawingData, scene: Scene, frame: Frame): readonly LevelDimension[] {
  const mount = frame.x(0);
  const mountY = frame.y(0) + 12;
  const [cornerX, cornerY] = [frame.x(scene.corner[0]), frame.y(scene.corner[1])];
  const say = (slot: string, words: string) => {
    const lead = hold(data.show(slot));
    return { lead, text: `${lead} ${words}` };
  };
  return [
    {
      ...say('bulkhead_gap', 'to the bulkhead, as it stands'),
      from: cornerX,
      to: frame.x(scene.corner[0] + scene.gap),
      fromY: cornerY,
      toY: frame.y(scene.corner[1] * WALL_FOOT),
      part: 'gap',
    },
    {
      ...say('head_reach', 'mounts to the high point'),
      from: mount,
      to: cornerX,
      fromY: mountY,
      toY: cornerY,
      part: 'reach',
    },
    {
      ...say('mount_to_tail', 'mounts to tail'),
      from: mount,
      to: frame.x(scene.tail[0]),
      fromY: mountY,
      toY: frame.y(scene.tail[1]),
      part: 'tail',
    },
  ];
}

function noteOf({ assumed }: Scene, width: number): readonly string[] {
  const text =
    assumed.length === 0
      ? ''
      : `Not to scale: ${assumed.join(', ')} not known or not possible, and only assumed.`;
  return wrapText(text, width - 4, 13);
}

function hold(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}

function describe(data: DrawingData): string {
  const limit =
    data.number('drop_limit') === undefined
      ? ''
      : ` It may come down by ${data.show('drop_limit')}.`;
  return (
    `Side view. The engine turns about its mounts; the tail is ${data.show('mount_to_tail')} behind them. ` +
    `With the tail let down by ${data.show('drop')} the point ${data.show('head_height')} above the mounts ` +
    `has ${data.show('gap_left')} left of ${data.show('bulkhead_gap')} to the bulkhead.${limit}`
  );
}
