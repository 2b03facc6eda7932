import { formatAttribute } from './svg.ts';

/** Length of an arrowhead in px; its width is two thirds of that. */
export const ARROW = 9;

export type Heading = 'left' | 'right' | 'up' | 'down';

const TURNS: Readonly<Record<Heading, readonly [along: number, across: number]>> = {
  right: [1, 0],
  left: [-1, 0],
  down: [0, 1],
  up: [0, -1],
};

/** Path of a filled arrowhead with its tip at a point (ISO 129-1: closed, slender). */
export function arrowhead(x: number, y: number, heading: Heading, length = ARROW): string {
  const [dx, dy] = TURNS[heading];
  const half = length / 3;
  const [backX, backY] = [x - dx * length, y - dy * length];
  return polygon([
    [x, y],
    [backX - dy * half, backY + dx * half],
    [backX + dy * half, backY - dx * half],
  ]);
}

export function polygon(points: readonly (readonly [number, number])[]): string {
  return `M${points.map(([x, y]) => `${formatAttribute(x)} ${formatAttribute(y)}`).join('L')}Z`;
}

export function line(x1: number, y1: number, x2: number, y2: number): string {
  return `M${[x1, y1].map(formatAttribute).join(' ')}L${[x2, y2].map(formatAttribute).join(' ')}`;
}

export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * Path of the hatching of a rectangle: lines at 45°, already cut to its edges. A pattern would
 * need an id, and ids of several drawings on a page must not meet.
 */
export function hatch(area: Rectangle, spacing = 7): string {
  const { x, y, width, height } = area;
  const lines: string[] = [];
  // A line is all points with (x - left) + (y - top) = reach. The grid is that of the whole
  // drawing, so that areas beside each other are hatched as one.
  const first = Math.ceil((x + y) / spacing) * spacing - (x + y);
  for (let reach = first; reach < width + height; reach += spacing) {
    const fromX = Math.max(0, reach - height);
    const toX = Math.min(width, reach);
    if (toX > fromX) lines.push(line(x + fromX, y + reach - fromX, x + toX, y + reach - toX));
  }
  return lines.join('');
}
