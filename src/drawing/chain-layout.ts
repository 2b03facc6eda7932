import { type ChainData, type ChainTerm, signedText } from './chain-data.ts';
import { type ChainLink, createChainScale } from './chain-scale.ts';
import { type Lettering, LINE, lettersHeight } from './lettering.ts';
import { ARROW } from './shapes.ts';
import { textWidth } from './text-width.ts';
import { widestLine, wrapText } from './wrap-text.ts';

export const SIZE = 13;
const TOTAL_SIZE = 15;
/** From this width on, the words stand in a column beside the drawing. */
const WIDE = 560;
/** Share of a wide drawing that the words may take. */
const COLUMN = 0.4;
/** Room beside the chain for arrows that point at it from outside. */
export const TAIL = 2 * ARROW;
/** From lettering to the dimension line under it. */
const LIFT = 3;
/** Half the height of the band that the closing dimension runs in. */
export const BAND = 7;
/** From a dimension line to the lettering of the next row. */
const DROP = 9;

export interface ChainLayout {
  readonly height: number;
  readonly origin: number;
  readonly end: number;
  readonly rows: readonly ChainRow[];
  readonly total: ChainRow;
  readonly note: Lettering | undefined;
}

/** A dimension: its line at `y`, and its lettering. */
export interface ChainRow extends ChainLink {
  readonly top: number;
  readonly y: number;
  /** Where the next row may start. */
  readonly foot: number;
  readonly letters: readonly Lettering[];
}

/** What stands on one row. */
interface Entry extends ChainLink {
  readonly value: string;
  readonly label: string;
  readonly closing: boolean;
}

/** Where everything on a dimension chain goes, in px, for a width. */
export function layOutChain(data: ChainData, width: number): ChainLayout {
  const column = width < WIDE ? 0 : measureColumn(data, width * COLUMN);
  const left = column === 0 ? 0 : column + 12;
  const { origin, end, links } = createChainScale(data.terms, left + TAIL, width - TAIL);
  const entries = data.terms.map((term, i) => enterTerm(term, links[i]!));
  const place = column === 0 ? placeOver : placeBeside;
  const rows: ChainRow[] = [];
  for (const entry of [...entries, enterTotal(data, origin, end)])
    rows.push(place(entry, footOf(rows.at(-1)), { left, column, width }));
  const total = rows.pop()!;
  const note = noteUnknown(data.terms, footOf(total), width);
  const foot = note === undefined ? total.foot : note.top + lettersHeight(note.lines, SIZE);
  return { height: Math.ceil(foot), origin, end, rows, total, note };
}

function enterTerm(term: ChainTerm, link: ChainLink): Entry {
  const text = link.known ? term.text : '?';
  return { ...link, value: hold(signedText({ ...term, text })), label: term.label, closing: false };
}

function enterTotal({ total }: ChainData, from: number, to: number): Entry {
  const known = Number.isFinite(total.value);
  const value = hold(known ? total.text : '?');
  return { from, to, known, value, label: total.label, closing: true };
}

/** A number is not parted from its unit. */
function hold(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}

function sizeOf({ closing }: Entry): number {
  return closing ? TOTAL_SIZE : SIZE;
}

/** From the foot of the lettering over a dimension line to the line. */
function liftOf({ closing }: Entry): number {
  return closing ? BAND + LIFT : LIFT;
}

function footOf(row: ChainRow | undefined): number {
  return row === undefined ? 0 : row.foot;
}

interface Room {
  /** Left edge of the chain's part of the drawing. */
  readonly left: number;
  /** Width of the column of words; 0 without one. */
  readonly column: number;
  readonly width: number;
}

function measureColumn({ terms, total }: ChainData, most: number): number {
  const widths = [
    ...terms.map(({ label }) => textWidth(label, SIZE)),
    textWidth(total.label, TOTAL_SIZE, 700),
  ];
  return Math.min(most, Math.max(...widths));
}

/** Words in the column, the value on the line where it fits between the arrows, else beside it. */
function placeBeside(entry: Entry, top: number, room: Room): ChainRow {
  const size = sizeOf(entry);
  const weight = entry.closing ? 700 : 400;
  const lines = wrapText(entry.label, room.column, size, weight);
  const half = lettersHeight(lines, size) / 2;
  const y = top + Math.max(size * LINE + liftOf(entry), half);
  const words = { lines, x: 0, top: y - half, anchor: 'start', size, weight } as const;
  const foot = y + Math.max(DROP, half + 4);
  return { ...entry, top, y, foot, letters: [words, placeValue(entry, y, room)] };
}

function placeValue(entry: Entry, y: number, room: Room): Lettering {
  const size = sizeOf(entry);
  const wide = textWidth(entry.value, size, 700);
  const [low, high] = [Math.min(entry.from, entry.to), Math.max(entry.from, entry.to)];
  const over = y - liftOf(entry) - size * LINE;
  const middle = y - (size * LINE) / 2;
  const base = { lines: [entry.value], size, weight: 700, anchor: 'start', halo: true } as const;
  if (wide + 8 <= high - low) return { ...base, x: (low + high - wide) / 2, top: over };
  const aside = isShort(entry) ? TAIL + 5 : 8;
  if (high + aside + wide <= room.width) return { ...base, x: high + aside, top: middle };
  if (low - aside - wide >= room.left) return { ...base, x: low - aside - wide, top: middle };
  return { ...base, x: keepBlock((low + high) / 2, wide, room.left, room.width), top: over };
}

/** True where arrows do not fit between the extension lines. */
export function isShort({ from, to }: ChainLink): boolean {
  return Math.abs(to - from) < 2 * ARROW + 4;
}

/** Value and words over the line, as near to its middle as the edges allow. */
function placeOver(entry: Entry, top: number, { width }: Room): ChainRow {
  const size = sizeOf(entry);
  const lead = entry.closing ? `=\u00a0${entry.value}` : entry.value;
  const weight = entry.closing ? 700 : 400;
  // The value is bold in either case: what it is wider by is kept free.
  const bolder = textWidth(lead, size, 700) - textWidth(lead, size, weight);
  const lines = wrapText(`${lead} ${entry.label}`, width - 4 - bolder, size, weight);
  const middle = (entry.from + entry.to) / 2;
  const x = keepBlock(middle, widestLine(lines, size, weight) + bolder, 2, width - 2);
  const y = top + lettersHeight(lines, size) + liftOf(entry);
  const letters = { lines, x, top, anchor: 'start', size, weight, lead, halo: true } as const;
  return { ...entry, top, y, foot: y + DROP, letters: [letters] };
}

/** Left edge of a block that is to stand around `middle`, kept between the edges. */
function keepBlock(middle: number, wide: number, left: number, right: number): number {
  return Math.max(left, Math.min(middle - wide / 2, right - wide));
}

function noteUnknown(
  terms: readonly ChainTerm[],
  top: number,
  width: number,
): Lettering | undefined {
  const count = terms.filter(({ value }) => !Number.isFinite(value)).length;
  if (count === 0) return undefined;
  const which = count === 1 ? 'one value is' : `${count} values are`;
  const lines = wrapText(`Not to scale: ${which} not known yet.`, width - 2, SIZE);
  return { lines, x: 0, top: top + 2, anchor: 'start', size: SIZE };
}
