import { type Lettering, LINE } from '../lettering.ts';
import { textWidth } from '../text-width.ts';
import type { LeverSpot } from './tunnel-opening-scene.ts';

export const LABEL_SIZE = 13;
const HIGH = LABEL_SIZE * LINE;
const BETWEEN = 6;
/** From the opening's edge to the words beside it. */
const AWAY = 5;

/** A gear's name beside the opening, with the ends of its leader, in px. */
export interface GearLabel {
  readonly letters: Lettering;
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
}

/** Edges of the opening, in px. */
export interface OpeningEdges {
  readonly left: number;
  readonly right: number;
  readonly front: number;
  readonly rear: number;
}

interface Spot {
  readonly gear: string;
  readonly x: number;
  readonly y: number;
}

/**
 * Names the gears round the opening as they lie in the gate: a row in front, a row behind, and what
 * is in the middle to the right. Undefined where the names have no room beside each other.
 *
 * @param width of the place that they may stand in, from 0
 */
export function placeGearLabels(
  levers: readonly LeverSpot[],
  place: (lever: LeverSpot) => readonly [x: number, y: number],
  edges: OpeningEdges,
  width: number,
): readonly GearLabel[] | undefined {
  const spots = levers.map((lever) => {
    const [x, y] = place(lever);
    return { gear: lever.gear, x, y };
  });
  const { front, middle, rear } = groupSpots(spots);
  const rows = [
    placeRow(front, edges.front - AWAY - HIGH, width, 'below'),
    placeRow(rear, edges.rear + AWAY, width, 'above'),
    placeColumn(middle, edges, width),
  ];
  return rows.every((row) => row !== undefined) ? rows.flat() : undefined;
}

/** By thirds of the whole throw; without a throw all stand in front. */
function groupSpots(spots: readonly Spot[]) {
  const ys = spots.map(({ y }) => y);
  const [first, last] = [Math.min(...ys), Math.max(...ys)];
  const third = (last - first) / 3;
  const inFront = (spot: Spot) => spot.y <= first + third;
  const behind = (spot: Spot) => !inFront(spot) && spot.y >= last - third;
  return {
    front: spots.filter(inFront),
    rear: spots.filter(behind),
    middle: spots.filter((spot) => !inFront(spot) && !behind(spot)),
  };
}

function placeRow(
  spots: readonly Spot[],
  top: number,
  width: number,
  leader: 'above' | 'below',
): readonly GearLabel[] | undefined {
  const order = spots.toSorted((a, b) => a.x - b.x);
  const wides = order.map(({ gear }) => textWidth(gear, LABEL_SIZE, 700));
  const places = spread(
    order.map(({ x }) => x),
    wides,
    2,
    width - 2,
  );
  return places?.map((x, i) => ({
    letters: lettersOf(order[i]!, x, top, 'middle'),
    from: [x, leader === 'below' ? top + HIGH : top],
    to: [order[i]!.x, order[i]!.y],
  }));
}

function placeColumn(
  spots: readonly Spot[],
  { right, front, rear }: OpeningEdges,
  width: number,
): readonly GearLabel[] | undefined {
  const order = spots.toSorted((a, b) => a.y - b.y);
  const wide = Math.max(0, ...order.map(({ gear }) => textWidth(gear, LABEL_SIZE, 700)));
  const places = spread(
    order.map(({ y }) => y),
    order.map(() => HIGH),
    front,
    rear,
  );
  if (right + AWAY + wide > width) return order.length === 0 ? [] : undefined;
  return places?.map((y, i) => ({
    letters: lettersOf(order[i]!, right + AWAY, y - HIGH / 2, 'start'),
    from: [right + AWAY - 2, y],
    to: [order[i]!.x, order[i]!.y],
  }));
}

function lettersOf({ gear }: Spot, x: number, top: number, anchor: Lettering['anchor']): Lettering {
  return { lines: [gear], x, top, anchor, size: LABEL_SIZE, weight: 700, halo: true };
}

/**
 * Middles of things in a row, as near as may be to where they are wanted and without touching;
 * undefined where they are longer than the row.
 *
 * @param wanted ascending
 */
export function spread(
  wanted: readonly number[],
  sizes: readonly number[],
  from: number,
  to: number,
): readonly number[] | undefined {
  const needed =
    sizes.reduce((sum, size) => sum + size, 0) + BETWEEN * Math.max(0, sizes.length - 1);
  if (needed > to - from) return undefined;
  const shift = pushRight(wanted, sizes);
  const slack = shift.reduce((sum, place, i) => sum + place - wanted[i]!, 0) / (wanted.length || 1);
  return pullIn(
    shift.map((place) => place - slack),
    sizes,
    from,
    to,
  );
}

/** Each behind the one before it. */
function pushRight(wanted: readonly number[], sizes: readonly number[]): readonly number[] {
  const places: number[] = [];
  wanted.forEach((want, i) => {
    const least = i === 0 ? want : places[i - 1]! + (sizes[i - 1]! + sizes[i]!) / 2 + BETWEEN;
    places.push(Math.max(want, least));
  });
  return places;
}

/** Nothing beyond the ends: pushed in from the left, then back from the right. */
function pullIn(
  places: readonly number[],
  sizes: readonly number[],
  from: number,
  to: number,
): readonly number[] {
  const first = places.map((place, i) => (i === 0 ? Math.max(place, from + sizes[0]! / 2) : place));
  const pushed = [...pushRight(first, sizes)];
  let limit = to;
  for (let i = pushed.length - 1; i >= 0; i -= 1) {
    pushed[i] = Math.min(pushed[i]!, limit - sizes[i]! / 2);
    limit = pushed[i]! - sizes[i]! / 2 - BETWEEN;
  }
  return pushed;
}
