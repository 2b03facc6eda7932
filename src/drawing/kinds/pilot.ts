import type { DrawingData, DrawingDeclaration, DrawingPaper } from '../declaration.ts';
import { drawDimensions, type LevelDimension, layOutDimensions } from '../dimension-rows.ts';
import { PLANS } from '../drawing-plans.ts';
import { drawFlags, type Flag, layOutFlags } from '../flags.ts';
import { createLettering, lettersHeight } from '../lettering.ts';
import { hatch, line, type Rectangle } from '../shapes.ts';
import { createElement, createPen, createRoot, formatAttribute, type Pen } from '../svg.ts';
import { wrapText } from '../wrap-text.ts';
import { createPilotScene, type PilotPart, type PilotScene } from './pilot-scene.ts';

const SIZE = 13;
const MARGIN = 10;
/** No section grows taller than this on wide paper. */
const TALLEST = 340;
/** How far centre line and friction face run past the section. */
const OVERRUN = 7;
/** ISO 128: long dash and dot, a centre line; long dash and two dots, a part that is not cut. */
const CENTRE_LINE = '12 3 3 3';
const NEIGHBOUR = '12 3 3 3 3 3';

/** Section along the crank's axis: crank, pilot, input shaft and the hub of the disc. */
export const PILOT: DrawingDeclaration = {
  ...PLANS.pilot,
  draw,
  describe,
};

/** From metres to px; `y` counts from the top of the section. */
interface Frame {
  readonly x: (metres: number) => number;
  readonly y: (metres: number) => number;
  readonly height: number;
}

function createFrame({ parts, spans, face }: PilotScene, width: number): Frame {
  const stops = [...parts, ...spans].flatMap(({ from, to }) => [from, to]);
  const all = [0, ...stops, ...(face === undefined || !Number.isFinite(face) ? [] : [face])];
  const [left, right] = [Math.min(...all), Math.max(...all)];
  const radius = Math.max(0, ...parts.map(({ outer }) => outer));
  // While a page is being laid out it may be narrower than the margins.
  const wide = Math.max(1, width - 2 * MARGIN);
  const scale = Math.min(wide / Math.max(right - left, 1e-9), TALLEST / Math.max(2 * radius, 1e-9));
  const start = (width - (right - left) * scale) / 2;
  const middle = radius * scale + OVERRUN;
  return {
    x: (metres) => start + (metres - left) * scale,
    y: (metres) => middle - metres * scale,
    height: 2 * middle,
  };
}

function draw(data: DrawingData, paper: DrawingPaper): SVGElement {
  const pen = createPen(paper);
  const scene = createPilotScene(data);
  const frame = createFrame(scene, paper.width);
  const flags = layOutFlags(labelsOf(scene, frame), paper.width);
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
  const figure = createElement(pen, 'g', {
    transform: `translate(0 ${formatAttribute(flags.height)})`,
  });
  figure.append(
    ...scene.parts.flatMap((part) => drawPart(pen, part, frame)),
    ...drawLines(pen, scene, frame),
  );
  root.append(
    figure,
    ...drawDimensions(pen, rows, flags.height, rowsTop),
    ...drawFlags(pen, flags, flags.height),
    ...createLettering(pen, {
      lines: note,
      x: 2,
      top: noteTop,
      anchor: 'start',
      size: SIZE,
      colour: pen.inks.soft,
    }),
  );
  return root;
}

/** A ring is cut twice, above the axis and below it; a solid part stands as one. */
function drawPart(pen: Pen, part: PilotPart, frame: Frame): readonly SVGElement[] {
  const { inner, outer } = part;
  const bands =
    inner > 0 ? [[outer, inner] as const, [-inner, -outer] as const] : [[outer, -outer] as const];
  return bands.flatMap(([top, foot]) => drawBand(pen, part, boxOf(part, top, foot, frame)));
}

function boxOf({ from, to }: PilotPart, top: number, foot: number, frame: Frame): Rectangle {
  const [x, y] = [frame.x(from), frame.y(top)];
  return { x, y, width: frame.x(to) - x, height: frame.y(foot) - y };
}

/** ISO 128: cut metal is hatched; shafts are not cut lengthwise. */
function drawBand(pen: Pen, { name }: PilotPart, box: Rectangle): readonly SVGElement[] {
  const isShaft = name === 'spigot' || name === 'shaft' || name === 'splines';
  const isBush = name === 'bush';
  const outline = createElement(pen, 'rect', {
    ...box,
    fill: isBush ? pen.inks.setWash : pen.inks.paper,
    stroke: isBush ? pen.inks.set : pen.inks.ink,
    'stroke-width': 1.4,
    'data-part': name,
  });
  if (name === 'splines') return [outline, drawSplines(pen, box)];
  if (isShaft || isBush) return [outline];
  const lines = createElement(pen, 'path', {
    d: hatch(box, name === 'hub' ? 5 : 8),
    stroke: pen.inks.soft,
    'stroke-width': 0.8,
  });
  return [outline, lines];
}

/** ISO 6413: the root of the splines as a thin line. */
function drawSplines(pen: Pen, { x, y, width, height }: Rectangle): SVGElement {
  const depth = height * 0.08;
  return createElement(pen, 'path', {
    d:
      line(x, y + depth, x + width, y + depth) +
      line(x, y + height - depth, x + width, y + height - depth),
    stroke: pen.inks.ink,
    'stroke-width': 0.7,
  });
}

/** Axis, and the friction face of the flywheel, which is not cut. */
function drawLines(pen: Pen, scene: PilotScene, frame: Frame): readonly SVGElement[] {
  const { parts, face } = scene;
  if (parts.length === 0) return [];
  const ends = parts.flatMap(({ from, to }) => [frame.x(from), frame.x(to)]);
  const axis = createElement(pen, 'path', {
    d: line(Math.min(...ends) - OVERRUN, frame.y(0), Math.max(...ends) + OVERRUN, frame.y(0)),
    stroke: pen.inks.soft,
    'stroke-width': 0.9,
    'stroke-dasharray': CENTRE_LINE,
    'data-part': 'axis',
  });
  if (face === undefined || !Number.isFinite(face)) return [axis];
  const x = frame.x(face);
  const wheel = createElement(pen, 'path', {
    d: line(x, 0, x, frame.height),
    stroke: pen.inks.soft,
    'stroke-width': 1.2,
    'stroke-dasharray': NEIGHBOUR,
    'data-part': 'flywheel',
    'data-x': x,
  });
  return [axis, wheel];
}

const NAMES: Readonly<Partial<Record<PilotPart['name'], string>>> = {
  crank: 'Crank',
  bush: 'Bush',
  spigot: 'Spigot',
  splines: 'Splines',
  hub: 'Hub',
};

function labelsOf({ parts, face }: PilotScene, frame: Frame): readonly Flag[] {
  const named = parts.flatMap((part): readonly Flag[] => {
    const text = NAMES[part.name];
    if (text === undefined) return [];
    return [{ x: frame.x(labelPlace(part)), y: frame.y((part.inner + part.outer) / 2), text }];
  });
  if (face === undefined || !Number.isFinite(face) || parts.length === 0) return named;
  return [...named, { x: frame.x(face), y: 4, text: 'Friction face' }];
}

/** Leaders of parts that lie over one another start at different places. */
function labelPlace({ name, from, to }: PilotPart): number {
  const share = { crank: 0.15, spigot: 0.12, bush: 0.6, splines: 0.9 }[name as string] ?? 0.5;
  return from + share * (to - from);
}

const WORDS = {
  engaged: 'of the spigot in the bush',
  shoulder_clearance: 'from bush to shoulder',
  end_clearance: 'beyond the tip',
  reach: 'past the flange',
} as const;

function dimensionsOf(
  data: DrawingData,
  { spans }: PilotScene,
  frame: Frame,
  pen: Pen,
): readonly LevelDimension[] {
  return spans.map((span) => {
    const lead = data.show(span.slot).replaceAll(' ', '\u00a0');
    const isShort = (data.number(span.slot) ?? 0) <= 0;
    return {
      from: frame.x(span.from),
      to: frame.x(span.to),
      text: `${lead} ${WORDS[span.slot]}`,
      lead,
      fromY: frame.y(-span.fromRadius),
      toY: frame.y(-span.toRadius),
      part: span.slot,
      ...colourOf(span.slot, isShort, pen),
    };
  });
}

function colourOf(slot: string, isShort: boolean, pen: Pen): { readonly colour?: string } {
  if (isShort) return { colour: pen.inks.warn };
  return slot === 'engaged' ? { colour: pen.inks.set } : {};
}

function noteOf({ missing }: PilotScene): string {
  return missing.length === 0
    ? ''
    : `Not drawn, as not known or not possible: ${missing.join(', ')}.`;
}

function describe(data: DrawingData): string {
  const hub =
    data.number('hub_near') === undefined
      ? ''
      : ` The hub of the disc begins ${data.show('hub_near')} behind the flange.`;
  return (
    `Section along the axis. The tip of the spigot stands ${data.show('reach')} past the crank flange; ` +
    `${data.show('engaged')} of it is in the bush, which is ${data.show('bush_length')} long. ` +
    `Beyond the tip there is ${data.show('end_clearance')}, between bush and shoulder ${data.show('shoulder_clearance')}.${hub}`
  );
}
