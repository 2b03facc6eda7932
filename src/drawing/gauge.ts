import type { GaugeData } from './gauge-data.ts';
import { type GaugeLayout, layOutGauge, POINTER, type Pointer } from './gauge-layout.ts';
import { createSpread } from './gauge-spread.ts';
import { describeGauge } from './gauge-words.ts';
import { createLettering } from './lettering.ts';
import { hatch, line, polygon, type Rectangle } from './shapes.ts';
import { createElement, createPen, createRoot, type DrawingOptions, type Pen } from './svg.ts';

/**
 * The limit gauge: the window clear and to scale, what lies outside it hatched, a pointer on each
 * value. A value past the end of the scale has an arrow there instead. Needs a width of 200 px.
 */
export function drawGauge(data: GaugeData, options: DrawingOptions): SVGElement {
  const pen = createPen(options);
  const layout = layOutGauge(data, options.width);
  const root = createRoot(pen, options, {
    title: data.title,
    description: describeGauge(data),
    width: options.width,
    height: layout.height,
  });
  root.append(...drawBar(pen, layout), ...drawLimits(pen, layout));
  root.append(...drawWords(pen, layout));
  for (const pointer of layout.pointers) root.append(...drawPointer(pen, layout, pointer));
  // Last, so that no pole runs over a label.
  for (const { letters } of layout.pointers)
    root.append(...createLettering(pen, { ...letters, halo: true }));
  return root;
}

/** The stretches outside the window are open at their outer end: the scale goes on. */
function drawBar(pen: Pen, { bar, clear }: GaugeLayout): readonly SVGElement[] {
  const end = bar.x + bar.width;
  const { from, to } = clear ?? { from: end, to: end };
  const outside = [
    { ...bar, width: from - bar.x },
    { ...bar, x: to, width: end - to },
  ];
  const hatching = outside.map((area) => hatch(area)).join('');
  return [
    createElement(pen, 'path', {
      d: hatching + rails(bar, bar.x, end),
      stroke: pen.inks.soft,
      'stroke-width': 0.9,
    }),
    createElement(pen, 'path', {
      d: rails(bar, from, to),
      stroke: pen.inks.ink,
      'stroke-width': 1.6,
    }),
  ];
}

/** Upper and lower edge of a stretch of the bar. */
function rails(bar: Rectangle, from: number, to: number): string {
  const foot = bar.y + bar.height;
  return line(from, bar.y, to, bar.y) + line(from, foot, to, foot);
}

function drawLimits(pen: Pen, { bar, limits }: GaugeLayout): readonly SVGElement[] {
  return limits.flatMap(({ x, letters }) => [
    createElement(pen, 'path', {
      d: line(x, bar.y - 0.8, x, letters.top + 1),
      stroke: pen.inks.ink,
      'stroke-width': 1.6,
    }),
    ...createLettering(pen, letters),
  ]);
}

function drawWords(pen: Pen, { words, notes, pointers }: GaugeLayout): readonly SVGElement[] {
  const failing = new Set(pointers.map((pointer) => pointer.side));
  return [
    ...words.flatMap(({ side, letters }) =>
      createLettering(pen, {
        ...letters,
        colour: failing.has(side) ? pen.inks.warn : pen.inks.soft,
      }),
    ),
    ...notes.flatMap((letters) => createLettering(pen, { ...letters, colour: pen.inks.soft })),
  ];
}

function drawPointer(pen: Pen, layout: GaugeLayout, pointer: Pointer): readonly SVGElement[] {
  const colour = pointer.side === undefined ? pen.inks.set : pen.inks.warn;
  const tip = layout.bar.y - 1;
  const shape =
    pointer.off === undefined ? triangle(pointer.x, tip) : aside(pointer, tip - POINTER / 2);
  return [
    createElement(pen, 'path', { d: pole(pointer, tip), stroke: colour, 'stroke-width': 1.2 }),
    createElement(pen, 'path', {
      d: shape,
      fill: colour,
      'data-value': String(pointer.value.value),
    }),
    ...createSpread(pen, layout, pointer.value, colour),
  ];
}

function triangle(x: number, tip: number): string {
  return polygon([
    [x, tip],
    [x - 7, tip - POINTER],
    [x + 7, tip - POINTER],
  ]);
}

/** An arrow that points out of the drawing. */
function aside({ x, off }: Pointer, y: number): string {
  const inward = off === 'left' ? 1 : -1;
  const [neck, tail] = [x + inward * 12, x + inward * 26];
  return polygon([
    [x, y],
    [neck, y - 5],
    [neck, y - 1.5],
    [tail, y - 1.5],
    [tail, y + 1.5],
    [neck, y + 1.5],
    [neck, y + 5],
  ]);
}

/** Up to a label that flies above the lowest row. */
function pole(pointer: Pointer, tip: number): string {
  const foot = pointer.letters.anchor === 'middle' ? pointer.foot : pointer.letters.top + 2;
  return line(pointer.x, tip - POINTER, pointer.x, Math.min(foot, tip - POINTER));
}
