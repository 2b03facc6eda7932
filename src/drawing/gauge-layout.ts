import { type Callout, calloutsHeight, type PlacedCallout, placeCallouts } from './callouts.ts';
import {
  type GaugeData,
  type GaugeValue,
  isKnown,
  type Limit,
  type Side,
  sideOf,
} from './gauge-data.ts';
import { createGaugeScale, type GaugeScale, placeOnScale, type ScalePlace } from './gauge-scale.ts';
import { describeSides } from './gauge-words.ts';
import { type Lettering, LINE, lettersHeight } from './lettering.ts';
import type { Rectangle } from './shapes.ts';
import { widestLine, wrapText } from './wrap-text.ts';

/** Size of the lettering of a gauge in px. */
export const SIZE = 13;
export const BAR = 20;
/** Height of a pointer. */
export const POINTER = 12;
/** From a flag's pole to its text. */
const PAD = 5;
const TICK = 6;
/** Past so many lines under its side, what a side means is better read as a caption. */
const MOST_LINES = 3;
const EMPTY = 'no value yet';

export interface GaugeLayout {
  readonly height: number;
  readonly scale: GaugeScale;
  readonly bar: Rectangle;
  /** The window on the bar; undefined where the limits leave none. */
  readonly clear: { readonly from: number; readonly to: number } | undefined;
  readonly pointers: readonly Pointer[];
  readonly limits: readonly LimitMark[];
  readonly words: readonly SideWords[];
  /** Said in place of pointers, or of those that are missing. */
  readonly notes: readonly Lettering[];
}

export interface Pointer extends ScalePlace {
  readonly value: GaugeValue;
  readonly side: Side | undefined;
  readonly letters: Lettering;
  /** Foot of the label, where a pole to it ends. */
  readonly foot: number;
}

export interface LimitMark {
  readonly x: number;
  readonly letters: Lettering;
}

export interface SideWords {
  readonly side: Side;
  readonly letters: Lettering;
}

/** Where everything on a gauge goes, in px, for a width. */
export function layOutGauge(data: GaugeData, width: number): GaugeLayout {
  const scale = createGaugeScale(data);
  const known = data.values.filter(isKnown);
  const row = layOutPointers(data, known, scale, width);
  const bar = { x: 1, y: row.height + POINTER + 2, width: width - 2, height: BAR };
  const limits = layOutLimits(data, scale, bar);
  const words = layOutWords(data, limits, bar, width);
  const foot = Math.max(
    bar.y + BAR,
    ...[...limits, ...words].map(({ letters }) => footOf(letters)),
  );
  const missing = listMissing(data, known.length, foot, width);
  const notes = known.length === 0 ? [sayEmpty(width)] : missing;
  const height = Math.ceil(Math.max(foot, ...missing.map(footOf)) + 1);
  const clear = findClear(data, scale, bar);
  return { height, scale, bar, clear, pointers: row.pointers, limits, words, notes };
}

export function footOf(letters: Lettering): number {
  return letters.top + lettersHeight(letters.lines, letters.size);
}

function layOutPointers(
  data: GaugeData,
  values: readonly GaugeValue[],
  scale: GaugeScale,
  width: number,
): { readonly pointers: readonly Pointer[]; readonly height: number } {
  const places = values.map((value) =>
    placeOnScale(scale, value.value, { x: 1, width: width - 2 }),
  );
  const lines = values.map((value, i) =>
    wrapText(labelOf(value, places[i]!), width - 2 * PAD, SIZE, 700),
  );
  const callouts = places.map(({ x }, i) => measure(x, lines[i]!, 700));
  const placed = placeCallouts(callouts, 0, width);
  const height = Math.max(calloutsHeight(callouts, placed), SIZE * LINE);
  const pointers = values.map((value, i) => {
    const foot = height - placed[i]!.rise;
    const letters = hang(callouts[i]!, placed[i]!, lines[i]!, foot - callouts[i]!.height);
    return { ...places[i]!, value, side: sideOf(data, value.value), letters, foot };
  });
  return { pointers, height };
}

function labelOf(value: GaugeValue, place: ScalePlace): string {
  const text = value.label === undefined ? value.text : `${value.label} ${value.text}`;
  return place.off === undefined ? text : `${text}, off the scale`;
}

function measure(x: number, lines: readonly string[], weight: 400 | 700): Callout {
  const width = widestLine(lines, SIZE, weight) + 2 * PAD;
  return { x, width, height: lettersHeight(lines, SIZE) };
}

function hang(
  callout: Callout,
  place: PlacedCallout,
  lines: readonly string[],
  top: number,
): Lettering {
  const { left, anchor } = place;
  const x = {
    start: left + PAD,
    middle: left + callout.width / 2,
    end: left + callout.width - PAD,
  };
  return { lines, x: x[anchor], top, anchor, size: SIZE, weight: 700 };
}

/** A side without a limit is clear to the end of the bar. */
function findClear(data: GaugeData, scale: GaugeScale, bar: Rectangle): GaugeLayout['clear'] {
  const { least, most } = data;
  const place = (limit: Limit | undefined, end: number) =>
    limit !== undefined && Number.isFinite(limit.value)
      ? placeOnScale(scale, limit.value, bar).x
      : end;
  const [from, to] = [place(least, bar.x), place(most, bar.x + bar.width)];
  return from <= to ? { from, to } : undefined;
}

/** Limits hang under the bar as values stand over it. */
function layOutLimits(data: GaugeData, scale: GaugeScale, bar: Rectangle): readonly LimitMark[] {
  const sound = listLimits(data);
  const xs = sound.map((limit) => placeOnScale(scale, limit.value, bar).x);
  const lines = sound.map((limit) => wrapText(limit.text, bar.width - 2 * PAD, SIZE));
  const callouts = xs.map((x, i) => measure(x, lines[i]!, 400));
  const placed = placeCallouts(callouts, 0, bar.width + 2);
  const top = bar.y + bar.height + TICK;
  return xs.map((x, i) => ({
    x,
    letters: { ...hang(callouts[i]!, placed[i]!, lines[i]!, top + placed[i]!.rise), weight: 400 },
  }));
}

/** A window of no width has one limit. */
function listLimits({ least, most }: GaugeData): readonly Limit[] {
  const limits = least?.value === most?.value ? [least] : [least, most];
  return limits
    .filter((limit) => limit !== undefined)
    .filter(({ value }) => Number.isFinite(value));
}

/** Each side's meaning under its own stretch of the bar where there is room, else as captions. */
function layOutWords(
  data: GaugeData,
  limits: readonly LimitMark[],
  bar: Rectangle,
  width: number,
): readonly SideWords[] {
  const top = Math.max(bar.y + BAR, ...limits.map(({ letters }) => footOf(letters))) + 2;
  const under = layOutUnder(data, limits, bar, top);
  return under.every(({ letters }) => letters.lines.length <= MOST_LINES)
    ? under
    : layOutCaptions(data, top + 2, width);
}

function layOutUnder(
  data: GaugeData,
  limits: readonly LimitMark[],
  bar: Rectangle,
  top: number,
): readonly SideWords[] {
  const words: SideWords[] = [];
  const [first, last] = [limits[0], limits.at(-1)];
  if (data.below !== undefined && data.least !== undefined && first !== undefined)
    words.push(placeUnder('below', data.below, bar.x, first.x, top));
  if (data.above !== undefined && data.most !== undefined && last !== undefined)
    words.push(placeUnder('above', data.above, last.x, bar.x + bar.width, top));
  return words;
}

function placeUnder(side: Side, text: string, from: number, to: number, top: number): SideWords {
  const lines = wrapText(text, to - from - 8, SIZE);
  // At the right the block stands flush with the end of the bar, its lines still start together.
  const x = side === 'below' ? from : Math.max(from + 8, to - widestLine(lines, SIZE));
  return { side, letters: { lines, x, top, anchor: 'start', size: SIZE } };
}

function layOutCaptions(data: GaugeData, top: number, width: number): readonly SideWords[] {
  const sides = describeSides(data);
  const words: SideWords[] = [];
  let y = top;
  for (const side of ['below', 'above'] as const) {
    const lines = wrapText(sides[side], width - 2, SIZE);
    if (lines.length > 0)
      words.push({ side, letters: { lines, x: 1, top: y, anchor: 'start', size: SIZE } });
    y += lettersHeight(lines, SIZE) + (lines.length > 0 ? 4 : 0);
  }
  return words;
}

function sayEmpty(width: number): Lettering {
  return { lines: [EMPTY], x: width / 2, top: 0, anchor: 'middle', size: SIZE };
}

function listMissing(
  data: GaugeData,
  known: number,
  foot: number,
  width: number,
): readonly Lettering[] {
  const missing = data.values.filter((value) => !isKnown(value) && value.label !== undefined);
  if (known === 0 || missing.length === 0) return [];
  const text = `Not known yet: ${missing.map((value) => value.label).join(', ')}`;
  const lines = wrapText(text, width - 2, SIZE);
  return [{ lines, x: 1, top: foot + 4, anchor: 'start', size: SIZE }];
}
