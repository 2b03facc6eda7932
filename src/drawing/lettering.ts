import { createElement, type Pen } from './svg.ts';
import type { Weight } from './text-width.ts';

/** Height of a line of text for its size: what the font asks for, so that lines never touch. */
export const LINE = 1.32;
/** From the top of a line to its baseline, for its size. */
const BASELINE = 0.99;

/** Lettering in place: one or more lines, `top` the top of the first. */
export interface Lettering {
  readonly lines: readonly string[];
  readonly x: number;
  readonly top: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly size: number;
  readonly weight?: Weight;
  /** Words at the start of the first line that are set bold. */
  readonly lead?: string;
  readonly colour?: string;
  /** Breaks whatever lines run behind the text. */
  readonly halo?: boolean;
}

export function lettersHeight(lines: readonly string[], size: number): number {
  return lines.length * size * LINE;
}

/** One text element a line. */
export function createLettering(pen: Pen, letters: Lettering): readonly SVGElement[] {
  return letters.lines.map((line, i) =>
    createElement(
      pen,
      'text',
      {
        x: letters.x,
        y: letters.top + (i * LINE + BASELINE) * letters.size,
        'font-size': letters.size,
        'font-weight': letters.weight === 700 ? 700 : undefined,
        'text-anchor': letters.anchor,
        fill: letters.colour,
        ...(letters.halo ? haloOf(pen) : {}),
      },
      i === 0 && letters.lead !== undefined ? leadIn(pen, line, letters.lead) : [line],
    ),
  );
}

function leadIn(pen: Pen, line: string, lead: string): readonly (Node | string)[] {
  if (!line.startsWith(lead)) return [line];
  const bold = createElement(pen, 'tspan', { 'font-weight': 700 }, [lead]);
  return [bold, line.slice(lead.length)];
}

function haloOf(pen: Pen) {
  return {
    stroke: pen.inks.paper,
    'stroke-width': 5,
    'stroke-linejoin': 'round',
    'paint-order': 'stroke',
  };
}
