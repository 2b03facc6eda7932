/** A label that hangs over a point: `x` of the point, and the label's own size, in px. */
export interface Callout {
  readonly x: number;
  readonly width: number;
  readonly height: number;
}

export interface PlacedCallout {
  readonly left: number;
  /** From the foot of the lowest row up to the foot of this label. */
  readonly rise: number;
  /** Which side of the label stands over the point. */
  readonly anchor: 'start' | 'middle' | 'end';
}

interface Flag {
  readonly x: number;
  readonly left: number;
  readonly right: number;
  readonly row: number;
  readonly anchor: PlacedCallout['anchor'];
}

/** Room between a label and the pole that it flies from, and between two labels. */
export const GAP = 6;

/**
 * Places labels over their points between `from` and `to`: all in one row, each centred, where
 * that fits; else as flags on poles, in rows, so that no two labels touch and, if it can be had,
 * no pole runs through a label.
 */
export function placeCallouts(
  callouts: readonly Callout[],
  from: number,
  to: number,
): readonly PlacedCallout[] {
  const centred = callouts.map((callout) => raise(callout, 'middle', 0, from, to));
  const flags = haveRoom(centred) ? centred : flyFlags(callouts, from, to);
  return measureRows(callouts, flags);
}

/** Height of the rows that `placeCallouts` made. */
export function calloutsHeight(
  callouts: readonly Callout[],
  placed: readonly PlacedCallout[],
): number {
  return Math.max(0, ...placed.map((place, i) => place.rise + callouts[i]!.height));
}

function raise(
  callout: Callout,
  anchor: Flag['anchor'],
  row: number,
  from: number,
  to: number,
): Flag {
  const { x, width } = callout;
  const wanted = { start: x, middle: x - width / 2, end: x - width }[anchor];
  const left = Math.max(from, Math.min(wanted, to - width));
  return { x, left, right: left + width, row, anchor };
}

function haveRoom(flags: readonly Flag[]): boolean {
  return flags.every((a, i) => flags.every((b, j) => j <= i || !overlap(a, b)));
}

function overlap(a: Flag, b: Flag): boolean {
  return a.left < b.right + GAP && b.left < a.right + GAP;
}

/** Looking for places ends after so many tries; more than a handful of labels do not stand in one drawing. */
const TRIES = 4000;

/**
 * From right to left each label takes the lowest row that is free, going back on an earlier one where
 * else a pole would run through a label.
 */
function flyFlags(callouts: readonly Callout[], from: number, to: number): readonly Flag[] {
  const order = callouts.map((_, i) => i).sort((a, b) => callouts[b]!.x - callouts[a]!.x);
  const tries = { left: TRIES };
  const placed = search(
    order.map((i) => callouts[i]!),
    [],
    from,
    to,
    tries,
  );
  if (placed === undefined) return flyInOrder(callouts, order, from, to);
  return callouts.map((_, i) => placed[order.indexOf(i)]!);
}

/** Mutates `tries`. Undefined where no placing is clear, or none was found in time. */
function search(
  [callout, ...rest]: readonly Callout[],
  placed: readonly Flag[],
  from: number,
  to: number,
  tries: { left: number },
): readonly Flag[] | undefined {
  if (callout === undefined) return placed;
  for (let row = 0; row <= placed.length + rest.length; row++)
    for (const anchor of ['start', 'end'] as const) {
      tries.left -= 1;
      if (tries.left < 0) return undefined;
      const flag = raise(callout, anchor, row, from, to);
      if (!stands(flag) || !placed.every((other) => agree(flag, other))) continue;
      const all = search(rest, [...placed, flag], from, to, tries);
      if (all !== undefined) return all;
    }
  return undefined;
}

function flyInOrder(
  callouts: readonly Callout[],
  order: readonly number[],
  from: number,
  to: number,
): readonly Flag[] {
  const flags = new Map<number, Flag>();
  for (const i of order) flags.set(i, findRow(callouts[i]!, [...flags.values()], from, to));
  return callouts.map((_, i) => flags.get(i)!);
}

function findRow(callout: Callout, others: readonly Flag[], from: number, to: number): Flag {
  const top = Math.max(0, ...others.map((other) => other.row + 1));
  for (let row = 0; row <= top; row++)
    for (const anchor of ['start', 'end'] as const) {
      const flag = raise(callout, anchor, row, from, to);
      if (stands(flag) && others.every((other) => agree(flag, other))) return flag;
    }
  return raise(callout, 'start', top, from, to);
}

/** True where the label was not pushed off its pole by the edge of the drawing. */
function stands(flag: Flag): boolean {
  const edge = flag.anchor === 'start' ? flag.left : flag.right;
  return Math.abs(edge - flag.x) < 0.01;
}

function agree(a: Flag, b: Flag): boolean {
  if (a.row === b.row) return !overlap(a, b);
  return a.row > b.row ? isClear(a.x, b) : isClear(b.x, a);
}

/** True where a pole at `x` does not run through the label. */
function isClear(x: number, flag: Flag): boolean {
  return x <= flag.left || x >= flag.right;
}

function measureRows(
  callouts: readonly Callout[],
  flags: readonly Flag[],
): readonly PlacedCallout[] {
  const heights: number[] = [];
  flags.forEach((flag, i) => {
    heights[flag.row] = Math.max(heights[flag.row] ?? 0, callouts[i]!.height);
  });
  return flags.map(({ left, row, anchor }) => ({ left, rise: sum(heights.slice(0, row)), anchor }));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
