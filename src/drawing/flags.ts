import { type Callout, calloutsHeight, type PlacedCallout, placeCallouts } from './callouts.ts';
import { createLettering, type Lettering, lettersHeight } from './lettering.ts';
import { line } from './shapes.ts';
import { createElement, type Pen } from './svg.ts';
import { widestLine, wrapText } from './wrap-text.ts';

/** Words over a point of a figure, with a leader down to it. */
export interface Flag {
  /** The point, in px; `y` counts from the top of the figure. */
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Words at the start of the text that are set bold. */
  readonly lead?: string;
  readonly colour?: string;
}

export interface FlagRow {
  /** Height of the rows of words. */
  readonly height: number;
  readonly flags: readonly PlacedFlag[];
}

interface PlacedFlag {
  readonly flag: Flag;
  readonly letters: Lettering;
  readonly place: PlacedCallout;
}

const SIZE = 13;
/** From a leader to its words. */
const PAD = 5;
/** From the lowest words to the figure. */
const FOOT = 4;
/** Share of the width that words may take before they are wrapped. */
const SHARE = 0.62;
/** Radius of the dot that a leader ends in (ISO 128: inside an outline). */
const DOT = 2;

/** Sets words in rows over a figure `width` px wide, so that none are cut and none overlap. */
export function layOutFlags(flags: readonly Flag[], width: number): FlagRow {
  const lines = flags.map(({ text }) => wrapText(text, width * SHARE - 2 * PAD, SIZE, 700));
  const callouts = flags.map(({ x }, i) => measure(x, lines[i]!));
  const placed = placeCallouts(callouts, 0, width);
  const height = calloutsHeight(callouts, placed);
  return {
    height: flags.length === 0 ? 0 : height + FOOT,
    flags: flags.map((flag, i) => ({
      flag,
      place: placed[i]!,
      letters: hang(flag, lines[i]!, callouts[i]!, placed[i]!, height),
    })),
  };
}

function measure(x: number, lines: readonly string[]): Callout {
  return { x, width: widestLine(lines, SIZE, 700) + 2 * PAD, height: lettersHeight(lines, SIZE) };
}

function hang(
  { lead, colour }: Flag,
  lines: readonly string[],
  { width, height }: Callout,
  { left, rise, anchor }: PlacedCallout,
  total: number,
): Lettering {
  const x = { start: left + PAD, middle: left + width / 2, end: left + width - PAD }[anchor];
  return {
    lines,
    x,
    top: total - rise - height,
    anchor,
    size: SIZE,
    halo: true,
    ...(lead === undefined ? {} : { lead }),
    ...(colour === undefined ? {} : { colour }),
  };
}

/** Leaders first, words last: no leader runs over a word. The figure starts at `top`. */
export function drawFlags(pen: Pen, row: FlagRow, top: number): readonly SVGElement[] {
  const offset = top - row.height;
  return [
    ...row.flags.flatMap((placed) => drawLeader(pen, placed, offset, top)),
    ...row.flags.flatMap(({ letters }) =>
      createLettering(pen, { ...letters, top: letters.top + offset }),
    ),
  ];
}

function drawLeader(
  pen: Pen,
  { flag, letters, place }: PlacedFlag,
  offset: number,
  top: number,
): readonly SVGElement[] {
  const stroke = flag.colour ?? pen.inks.soft;
  const head = letters.top + offset;
  const from = place.anchor === 'middle' ? head + lettersHeight(letters.lines, SIZE) : head + 2;
  return [
    createElement(pen, 'path', {
      d: line(flag.x, from, flag.x, top + flag.y),
      stroke,
      'stroke-width': 0.9,
    }),
    createElement(pen, 'circle', { cx: flag.x, cy: top + flag.y, r: DOT, fill: stroke }),
  ];
}
