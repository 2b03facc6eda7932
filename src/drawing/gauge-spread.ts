import type { GaugeValue } from './gauge-data.ts';
import type { GaugeLayout } from './gauge-layout.ts';
import { placeOnScale } from './gauge-scale.ts';
import { line } from './shapes.ts';
import { createElement, type Pen } from './svg.ts';

const CAP = 6;

/** How sure a value is, inside the bar: thick where it likely lies, a whisker for the worst case. */
export function createSpread(
  pen: Pen,
  layout: Pick<GaugeLayout, 'bar' | 'scale'>,
  value: GaugeValue,
  colour: string,
): readonly SVGElement[] {
  const { likely, worst } = value.spread ?? {};
  const parts: SVGElement[] = [];
  if (worst !== undefined) parts.push(stroke(pen, whisker(layout, worst), colour, 1.6, 'worst'));
  if (likely !== undefined) parts.push(stroke(pen, stretch(layout, likely), colour, 6, 'likely'));
  return parts;
}

function stroke(pen: Pen, d: string, colour: string, width: number, part: string): SVGElement {
  return createElement(pen, 'path', {
    d,
    stroke: colour,
    'stroke-width': width,
    'data-spread': part,
  });
}

function stretch(
  { bar, scale }: Pick<GaugeLayout, 'bar' | 'scale'>,
  range: readonly [number, number],
) {
  const [from, to] = range.map((end) => placeOnScale(scale, end, bar).x);
  const y = bar.y + bar.height / 2;
  return line(from!, y, to!, y);
}

/** Capped at both ends, but for an end that lies off the scale. */
function whisker(
  layout: Pick<GaugeLayout, 'bar' | 'scale'>,
  range: readonly [number, number],
): string {
  const y = layout.bar.y + layout.bar.height / 2;
  const caps = range.map((end) => {
    const { x, off } = placeOnScale(layout.scale, end, layout.bar);
    return off === undefined ? line(x, y - CAP, x, y + CAP) : '';
  });
  return stretch(layout, range) + caps.join('');
}
