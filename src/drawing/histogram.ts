import { createLettering, LINE } from './lettering.ts';
import { line } from './shapes.ts';
import { createElement, createPen, createRoot, type DrawingOptions, type Pen } from './svg.ts';
import { textWidth } from './text-width.ts';

/** How many draws fell where. */
export interface HistogramData {
  readonly title: string;
  /** Neighbouring, of equal width, in rising order. */
  readonly bins: readonly { readonly from: number; readonly to: number; readonly count: number }[];
  /** The range that holds most of them, drawn in the accent colour. */
  readonly range: readonly [from: number, to: number];
  /** A value with its unit. */
  show(value: number): string;
}

const HEIGHT = 140;
const SIZE = 13;
const TOP = 8;
const TICK = 6;

/** Draws bars over an axis whose ends and range are labelled. */
export function drawHistogram(data: HistogramData, options: DrawingOptions): SVGElement {
  const pen = createPen(options);
  const { width } = options;
  const [from, to] = extentOf(data);
  const x = (value: number) => (to === from ? width / 2 : ((value - from) / (to - from)) * width);
  const most = Math.max(1, ...data.bins.map(({ count }) => count));
  const base = TOP + HEIGHT;
  const root = createRoot(pen, options, {
    title: data.title,
    description: describeHistogram(data),
    width,
    height: base + TICK + 2 * SIZE * LINE + 4,
  });
  for (const bin of data.bins) {
    const height = (bin.count / most) * HEIGHT;
    const [left, right] =
      bin.from === bin.to ? [x(bin.from) - 4, x(bin.from) + 4] : [x(bin.from), x(bin.to)];
    root.appendChild(
      createElement(pen, 'rect', {
        x: left,
        y: base - height,
        width: Math.max(0.5, right - left - 0.5),
        height,
        fill: isInside(bin, data.range) ? pen.inks.set : pen.inks.soft,
      }),
    );
  }
  root.appendChild(
    createElement(pen, 'path', {
      d: line(0, base, width, base),
      stroke: pen.inks.ink,
      'stroke-width': 1.2,
    }),
  );
  for (const letters of labels(data, pen, x, base, width)) root.appendChild(letters);
  return root;
}

function extentOf({ bins, range }: HistogramData): readonly [number, number] {
  return [bins[0]?.from ?? range[0], bins.at(-1)?.to ?? range[1]];
}

function isInside(
  bin: { readonly from: number; readonly to: number },
  [low, high]: readonly [number, number],
): boolean {
  const middle = (bin.from + bin.to) / 2;
  return middle >= low && middle <= high;
}

/** The ends of the range under their ticks, one below the other where they would meet. */
function labels(
  { range, show }: HistogramData,
  pen: Pen,
  x: (value: number) => number,
  base: number,
  width: number,
): readonly SVGElement[] {
  const placed = range.map((value) => {
    const text = show(value);
    const half = textWidth(text, SIZE, 700) / 2;
    return { text, at: x(value), middle: Math.min(width - half, Math.max(half, x(value))), half };
  });
  const [low, high] = placed as [(typeof placed)[0], (typeof placed)[0]];
  const meet = low.middle + low.half + 12 > high.middle - high.half;
  return placed.flatMap(({ text, at, middle }, i) => [
    createElement(pen, 'path', {
      d: line(at, base, at, base + TICK),
      stroke: pen.inks.set,
      'stroke-width': 2,
    }),
    ...createLettering(pen, {
      lines: [text],
      x: middle,
      top: base + TICK + 2 + (meet && i === 1 ? SIZE * LINE : 0),
      anchor: 'middle',
      size: SIZE,
      weight: 700,
      colour: pen.inks.set,
    }),
  ]);
}

/** The picture in words. */
export function describeHistogram({ bins, range, show }: HistogramData): string {
  const total = bins.reduce((sum, { count }) => sum + count, 0);
  const peak = bins.reduce(
    (best, bin) => (bin.count > best.count ? bin : best),
    bins[0] ?? { from: 0, to: 0, count: 0 },
  );
  return `${total} draws, most of them near ${show((peak.from + peak.to) / 2)}; 95 % lie between ${show(range[0])} and ${show(range[1])}.`;
}
