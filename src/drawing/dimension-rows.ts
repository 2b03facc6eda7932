import { createLettering, type Lettering, lettersHeight } from './lettering.ts';
import { ARROW, arrowhead, line } from './shapes.ts';
import { createElement, type Pen } from './svg.ts';
import { widestLine, wrapText } from './wrap-text.ts';

/** A level dimension under a figure: from one place to another, in px. */
export interface LevelDimension {
  readonly from: number;
  readonly to: number;
  /** Value and words: `42.0 in mounts to tail`. */
  readonly text: string;
  /** The value at the start of the text; set bold. */
  readonly lead: string;
  /** Where the extension lines start, from the top of the figure. */
  readonly fromY: number;
  readonly toY: number;
  readonly part: string;
  readonly colour?: string;
}

export interface DimensionRows {
  readonly height: number;
  readonly rows: readonly Row[];
}

interface Row {
  readonly dimension: LevelDimension;
  readonly letters: Lettering;
  /** The dimension line, from the top of the rows. */
  readonly y: number;
}

const SIZE = 13;
const LIFT = 3;
const DROP = 8;
/** How far an extension line runs past the dimension line (ISO 129-1). */
const OVERRUN = 5;
/** From the figure to the start of its extension line. */
const CLEAR = 3;
/** From words to an extension line that runs past them. */
const BESIDE = 4;

/** One row for each dimension, words over the line, so that nothing can overlap or be cut. */
export function layOutDimensions(
  dimensions: readonly LevelDimension[],
  width: number,
): DimensionRows {
  const rows: Row[] = [];
  let top = 2;
  dimensions.forEach((dimension, i) => {
    const past = dimensions.slice(i + 1).flatMap(({ from, to }) => [from, to]);
    const row = layOutRow(dimension, top, width, past);
    rows.push(row);
    top = row.y + DROP;
  });
  return { height: rows.length === 0 ? 0 : top, rows };
}

/** @param past where extension lines of later rows run through this one */
function layOutRow(
  dimension: LevelDimension,
  top: number,
  width: number,
  past: readonly number[],
): Row {
  const lines = wrapText(dimension.text, width - 4, SIZE, 700);
  const x = placeWords(dimension, widestLine(lines, SIZE, 700), width, past);
  const { lead, colour } = dimension;
  const base = { lines, x, top, lead, anchor: 'start', size: SIZE, halo: true } as const;
  const letters = colour === undefined ? base : { ...base, colour };
  return { dimension, letters, y: top + lettersHeight(lines, SIZE) + LIFT };
}

/** In the middle, or as near to it as lines that run through leave room within the dimension. */
function placeWords(
  { from, to }: LevelDimension,
  wide: number,
  width: number,
  past: readonly number[],
): number {
  const middle = Math.max(2, Math.min((from + to - wide) / 2, width - 2 - wide));
  const isClear = (x: number) => past.every((at) => at < x - 1 || at > x + wide + 1);
  if (isClear(middle)) return middle;
  const [least, most] = [Math.min(from, to) + BESIDE, Math.max(from, to) - BESIDE - wide];
  const places = past.flatMap((at) => [at + BESIDE, at - BESIDE - wide]);
  const clear = places.filter((x) => x >= least && x <= most && isClear(x));
  const away = (x: number) => Math.abs(x - middle);
  return clear.reduce((best, x) => (away(x) < away(best) ? x : best), clear[0] ?? middle);
}

/** Mutates nothing; the figure starts at `figureTop`, the rows at `top`. */
export function drawDimensions(
  pen: Pen,
  { rows }: DimensionRows,
  figureTop: number,
  top: number,
): readonly SVGElement[] {
  return [
    ...rows.map((row) => drawExtensions(pen, row, figureTop, top)),
    ...rows.flatMap((row) => drawLine(pen, row, top)),
    ...rows.flatMap(({ letters }) => createLettering(pen, { ...letters, top: letters.top + top })),
  ];
}

function drawExtensions(pen: Pen, { dimension, y }: Row, figureTop: number, top: number) {
  const { from, to, fromY, toY } = dimension;
  const foot = top + y + OVERRUN;
  return createElement(pen, 'path', {
    d:
      line(from, figureTop + fromY + CLEAR, from, foot) +
      line(to, figureTop + toY + CLEAR, to, foot),
    stroke: pen.inks.soft,
    'stroke-width': 0.8,
  });
}

/** Where it is short, the arrows point at it from outside. */
function drawLine(pen: Pen, { dimension, y }: Row, top: number): readonly SVGElement[] {
  const { from, to, part, colour = pen.inks.ink } = dimension;
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const isShort = high - low < 2 * ARROW + 4;
  const tail = isShort ? 2 * ARROW : 0;
  const heads = isShort
    ? arrowhead(low, top + y, 'right') + arrowhead(high, top + y, 'left')
    : arrowhead(low, top + y, 'left') + arrowhead(high, top + y, 'right');
  return [
    createElement(pen, 'path', {
      d: line(low - tail, top + y, high + tail, top + y),
      stroke: colour,
      'stroke-width': 1.2,
      'data-part': part,
      'data-from': from,
      'data-to': to,
    }),
    createElement(pen, 'path', { d: heads, fill: colour }),
  ];
}
