import type { DrawingData } from '../declaration.ts';

/** Beyond this a number is no length of anything in a car, in metres. */
const LONGEST = 20;
const USUAL_WIDTH = 0.075;
/** A datum further from all the rest than this share of it is only pointed at, from so far off. */
const FAR = 0.8;
const POINTED_AT = 0.25;
/** What rounding leaves. */
const SLACK = 1e-9;

/** A rectangle seen from above, in metres behind the datum and right of the tunnel's middle. */
export interface Plan {
  readonly front: number;
  readonly rear: number;
  readonly left: number;
  readonly right: number;
}

/** The lever where it passes the tunnel, in one gear: an ellipse. */
export interface LeverSpot {
  readonly gear: string;
  readonly back: number;
  readonly right: number;
  /** Half of it, fore and aft, and across. */
  readonly along: number;
  readonly across: number;
  /** True where it runs into the metal. */
  readonly touches: boolean;
}

/** What lies where, seen from above. A part whose size is not known is left out. */
export interface TunnelScene {
  readonly hole: Plan;
  /** Centres of the two round ends, behind the datum; one where the opening is round. */
  readonly centres: readonly number[];
  readonly least: Plan | undefined;
  readonly bezel: Plan | undefined;
  /** Flat of the tunnel's top, across. */
  readonly tunnel: number | undefined;
  readonly levers: readonly LeverSpot[];
  /** Where the datum is drawn: at 0, or on that side where it is too far off. */
  readonly datum: number;
  readonly isFar: boolean;
  /** True where the opening looks out from under the bezel. */
  readonly peeps: boolean;
  /** All that is drawn, datum included. */
  readonly extent: Plan;
  /** Slots of the opening that are drawn as usual, since they are not known or cannot be. */
  readonly assumed: readonly string[];
}

export function createTunnelScene(data: DrawingData): TunnelScene {
  const { hole, assumed } = holeOf(data);
  const [bezel, least] = [bezelOf(data), leastOf(data, hole)];
  const tunnel = sizeOf(data, 'tunnel_width');
  const levers = leversOf(data, hole);
  const parts = [hole, bezel, least, ...levers.map(boundsOf)].filter((part) => part !== undefined);
  const drawn = around(parts, tunnel ?? 0);
  const { datum, isFar } = datumOf(drawn);
  return {
    hole,
    centres: centresOf(hole),
    least,
    bezel,
    tunnel,
    levers,
    datum,
    isFar,
    peeps: bezel !== undefined && !contains(bezel, hole),
    extent: { ...drawn, front: Math.min(drawn.front, datum), rear: Math.max(drawn.rear, datum) },
    assumed,
  };
}

function numberOf(data: DrawingData, slot: string): number | undefined {
  const value = data.number(slot);
  return value !== undefined && Math.abs(value) < LONGEST ? value : undefined;
}

function sizeOf(data: DrawingData, slot: string): number | undefined {
  const value = numberOf(data, slot);
  return value !== undefined && value > 0 ? value : undefined;
}

function holeOf(data: DrawingData): { readonly hole: Plan; readonly assumed: readonly string[] } {
  const assumed: string[] = [];
  const orUsual = (slot: string, value: number | undefined, usual: number): number => {
    if (value === undefined) assumed.push(slot);
    return value ?? usual;
  };
  const width = orUsual('hole_width', sizeOf(data, 'hole_width'), USUAL_WIDTH);
  const front = orUsual('hole_front', numberOf(data, 'hole_front'), -2 * width);
  const end = numberOf(data, 'hole_rear');
  const rear = orUsual(
    'hole_rear',
    end !== undefined && end > front ? end : undefined,
    front + width,
  );
  return { hole: { front, rear, ...across(numberOf(data, 'hole_aside') ?? 0, width) }, assumed };
}

function across(middle: number, width: number): Pick<Plan, 'left' | 'right'> {
  return { left: middle - width / 2, right: middle + width / 2 };
}

function bezelOf(data: DrawingData): Plan | undefined {
  const [front, rear] = [numberOf(data, 'bezel_front'), numberOf(data, 'bezel_rear')];
  const width = sizeOf(data, 'bezel_width');
  if (front === undefined || rear === undefined || width === undefined || rear <= front)
    return undefined;
  return { front, rear, ...across(numberOf(data, 'bezel_aside') ?? 0, width) };
}

/** The least hole lies about the middle of the opening. */
function leastOf(data: DrawingData, hole: Plan): Plan | undefined {
  const [length, width] = [sizeOf(data, 'least_length'), sizeOf(data, 'least_width')];
  if (length === undefined || width === undefined) return undefined;
  const [along, aside] = middleOf(hole);
  return { front: along - length / 2, rear: along + length / 2, ...across(aside, width) };
}

function middleOf({ front, rear, left, right }: Plan): readonly [along: number, aside: number] {
  return [(front + rear) / 2, (left + right) / 2];
}

/** Radius of the round ends. */
export function roundingOf({ front, rear, left, right }: Plan): number {
  return Math.min(right - left, rear - front) / 2;
}

/** Two holes with one saw, and straight cuts between them. */
function centresOf(hole: Plan): readonly number[] {
  const radius = roundingOf(hole);
  const [first, second] = [hole.front + radius, hole.rear - radius];
  return second - first < SLACK ? [middleOf(hole)[0]] : [first, second];
}

/** Gears of which a size is missing are left out. */
function leversOf(data: DrawingData, hole: Plan): readonly LeverSpot[] {
  const [backs, rights, alongs, acrosses] = [
    'lever_back',
    'lever_right',
    'lever_length',
    'lever_width',
  ].map((slot) => data.list(slot) ?? []);
  return (data.texts('gears') ?? []).flatMap((gear, i) => {
    const [back, right, along, wide] = [backs![i]!, rights![i]!, alongs![i]!, acrosses![i]!];
    const isKnown = [back, right, along, wide].every((value) => Math.abs(value) < LONGEST);
    if (!isKnown || along <= 0 || wide <= 0) return [];
    const spot = { gear, back, right, along, across: wide };
    return [{ ...spot, touches: roomRound(spot, hole) < -SLACK }];
  });
}

/** From the lever to the nearest edge of the opening, round ends heeded; below 0 it is past it. */
function roomRound({ back, right, along, across }: Omit<LeverSpot, 'touches'>, hole: Plan): number {
  const radius = roundingOf(hole);
  const [middle, aside] = middleOf(hole);
  const past = Math.max(0, Math.abs(back - middle) - ((hole.rear - hole.front) / 2 - radius));
  const beside = Math.max(0, Math.abs(right - aside) - ((hole.right - hole.left) / 2 - radius));
  return radius - Math.hypot(past, beside) - Math.max(along, across);
}

function boundsOf({ back, right, along, across }: LeverSpot): Plan {
  return {
    front: back - along,
    rear: back + along,
    left: right - across,
    right: right + across,
  };
}

/** The smallest rectangle with all parts and the tunnel's flat in it. */
function around(parts: readonly Plan[], tunnel: number): Plan {
  return {
    front: Math.min(...parts.map(({ front }) => front)),
    rear: Math.max(...parts.map(({ rear }) => rear)),
    left: Math.min(-tunnel / 2, ...parts.map(({ left }) => left)),
    right: Math.max(tunnel / 2, ...parts.map(({ right }) => right)),
  };
}

function datumOf({ front, rear }: Plan): Pick<TunnelScene, 'datum' | 'isFar'> {
  const long = rear - front;
  if (front > FAR * long) return { datum: front - POINTED_AT * long, isFar: true };
  if (rear < -FAR * long) return { datum: rear + POINTED_AT * long, isFar: true };
  return { datum: 0, isFar: false };
}

function contains(outer: Plan, inner: Plan): boolean {
  return (
    outer.front <= inner.front + SLACK &&
    outer.rear >= inner.rear - SLACK &&
    outer.left <= inner.left + SLACK &&
    outer.right >= inner.right - SLACK
  );
}
