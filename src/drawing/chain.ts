import { type ChainData, describeChain } from './chain-data.ts';
import {
  BAND,
  type ChainLayout,
  type ChainRow,
  isShort,
  layOutChain,
  TAIL,
} from './chain-layout.ts';
import { createLettering } from './lettering.ts';
import { arrowhead, line } from './shapes.ts';
import { createElement, createPen, createRoot, type DrawingOptions, type Pen } from './svg.ts';

/** How far an extension line runs past the dimension line (ISO 129-1). */
const OVERRUN = 5;
/** Radius of the circle that marks where a term starts (ISO 129-1, origin of a dimension). */
const ORIGIN = 2.6;

/**
 * The dimension chain, to scale, in the manner of ISO 129: terms one below the other, each starting
 * at a circle where the one before ended, plus to the right and minus to the left; the closing
 * dimension last, in the colour of answers. Needs a width of 200 px.
 */
export function drawChain(data: ChainData, options: DrawingOptions): SVGElement {
  const pen = createPen(options);
  const layout = layOutChain(data, options.width);
  const root = createRoot(pen, options, {
    title: data.title,
    description: describeChain(data),
    width: options.width,
    height: layout.height,
  });
  root.append(drawClosingBand(pen, layout), ...drawExtensions(pen, layout));
  for (const row of layout.rows) root.append(...drawTerm(pen, row));
  root.append(...drawTotal(pen, layout));
  if (layout.note !== undefined)
    root.append(...createLettering(pen, { ...layout.note, colour: pen.inks.soft }));
  return root;
}

function drawClosingBand(pen: Pen, { origin, end, total }: ChainLayout): SVGElement {
  return createElement(pen, 'rect', {
    x: Math.min(origin, end),
    y: total.y - BAND,
    width: Math.abs(end - origin),
    height: 2 * BAND,
    fill: pen.inks.setWash,
  });
}

/** Thin lines that carry the end of each term to the next row, and both ends to the total. */
function drawExtensions(pen: Pen, layout: ChainLayout): readonly SVGElement[] {
  const { rows, total, origin, end } = layout;
  const foot = total.y + BAND + OVERRUN - 2;
  const steps = rows.slice(0, -1).map((row, i) => carry(row.to, row.y, rows[i + 1]!.y + OVERRUN));
  const first = rows[0]?.y ?? total.y - BAND;
  const last = rows.at(-1)?.y ?? total.y - BAND;
  return [
    createElement(pen, 'path', { d: steps.join(''), stroke: pen.inks.soft, 'stroke-width': 0.8 }),
    createElement(pen, 'path', {
      d: carry(origin, first, foot) + carry(end, last, foot),
      stroke: pen.inks.set,
      'stroke-width': 0.9,
    }),
  ];
}

function carry(x: number, from: number, to: number): string {
  return line(x, from - OVERRUN, x, to);
}

function drawTerm(pen: Pen, row: ChainRow): readonly SVGElement[] {
  const ink = pen.inks.ink;
  const origin = isShort(row)
    ? []
    : [
        createElement(pen, 'circle', {
          cx: row.from,
          cy: row.y,
          r: ORIGIN,
          fill: pen.inks.paper,
          stroke: ink,
          'stroke-width': 1.2,
        }),
      ];
  return [
    ...drawDimension(pen, row, ink, 'term', isShort(row)),
    ...origin,
    ...row.letters.flatMap((letters) => createLettering(pen, letters)),
  ];
}

function drawTotal(pen: Pen, { total }: ChainLayout): readonly SVGElement[] {
  const colour = pen.inks.set;
  return [
    ...drawDimension(pen, total, colour, 'total', true),
    ...total.letters.flatMap((letters) => createLettering(pen, { ...letters, colour })),
  ];
}

/** The line with its arrows; where it is short, arrows point at it from outside. */
function drawDimension(
  pen: Pen,
  row: ChainRow,
  colour: string,
  part: 'term' | 'total',
  both: boolean,
): readonly SVGElement[] {
  const { from, to, y } = row;
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const tail = isShort(row) ? TAIL : 0;
  const heads = isShort(row)
    ? arrowhead(low, y, 'right') + arrowhead(high, y, 'left')
    : arrowhead(to, y, to >= from ? 'right' : 'left') +
      (both ? arrowhead(from, y, to >= from ? 'left' : 'right') : '');
  return [
    createElement(pen, 'path', {
      d: line(low - tail, y, high + tail, y),
      stroke: colour,
      'stroke-width': 1.3,
      'stroke-dasharray': row.known ? undefined : '5 4',
      'data-part': part,
      'data-from': from,
      'data-to': to,
    }),
    createElement(pen, 'path', { d: heads, fill: colour }),
  ];
}
