import type { DrawingData } from '../declaration.ts';

/** Tallest drawing of the pedal itself, px. */
const TALLEST = 420;
/** Room to the right of the arm for the dimensions along it. */
export const RIGHT = 84;
const EDGE = 4;
const HEAD = 26;
/** Room below the pad for two dimensions. */
const FOOT = 66;
/** Length of the outline of the master, for each length of the pedal. */
export const MASTER = 0.3;
/** How far bulkhead and pad reach past the middle of the pad, for each length of the pedal. */
const PAST = 0.06;

export type Point = readonly [x: number, y: number];

/** Where everything on the pedal goes, in px, with the pivot given and one scale both ways. */
export interface PedalLayout {
  readonly scale: number;
  readonly pivot: Point;
  /** Half of the swing, in rad: at rest to the right, pressed to the left of upright. */
  readonly half: number;
  readonly pad: number;
  readonly rod: number | undefined;
  readonly stop: number | undefined;
  /** Where the bulkhead stands. */
  readonly bulkhead: number | undefined;
  readonly floor: number | undefined;
  readonly foot: number;
}

interface Size {
  readonly pad: number;
  readonly half: number;
  readonly rod: number | undefined;
  readonly stop: number | undefined;
  /** From the pivot forward, positive to the left. */
  readonly bulkhead: number | undefined;
  readonly floor: number | undefined;
}

/** Lays the pedal out for a width; undefined while its length or its travel is not known. */
export function layOutPedal(
  data: DrawingData,
  left: number,
  width: number,
): PedalLayout | undefined {
  const size = measure(data);
  if (size === undefined) return undefined;
  const { pad, half, bulkhead, floor } = size;
  const forward = Math.max(
    pad * Math.sin(half),
    bulkhead === undefined ? 0 : bulkhead + MASTER * pad,
    floor ?? 0,
  );
  const behind = Math.max(0, pad * Math.sin(half), -(bulkhead ?? 0));
  const tall = pad * (1 + PAST);
  // Dimensions along a pedal that lies far over stand above its pivot.
  const head = Math.max(HEAD, RIGHT * Math.sin(half));
  const scale = Math.min(
    (width - RIGHT - 2 * EDGE - 10) / (forward + behind),
    (TALLEST - head - FOOT) / tall,
  );
  const used = (forward + behind) * scale + RIGHT + 2 * EDGE + 10;
  const pivotX = left + Math.max(0, (width - used) / 2) + EDGE + 10 + forward * scale;
  const px = (value: number | undefined) => (value === undefined ? undefined : value * scale);
  return {
    scale,
    half,
    pivot: [pivotX, head],
    pad: pad * scale,
    rod: px(size.rod),
    stop: px(size.stop),
    bulkhead: bulkhead === undefined ? undefined : pivotX - bulkhead * scale,
    floor: floor === undefined ? undefined : pivotX - floor * scale,
    foot: head + tall * scale + FOOT,
  };
}

/** All lengths in metres; one that is not above nought is left out. */
function measure(data: DrawingData): Size | undefined {
  const [pad, travel] = [positive(data, 'pad_radius'), positive(data, 'pad_travel')];
  if (pad === undefined || travel === undefined) return undefined;
  const half = Math.asin(Math.min(1, travel / (2 * pad)));
  const stop = positive(data, 'stop_radius');
  const length = finite(data, 'stop_length');
  const floor = positive(data, 'floor');
  return {
    pad,
    half,
    rod: positive(data, 'rod_radius'),
    stop,
    bulkhead:
      stop === undefined || length === undefined ? undefined : stop * Math.sin(half) + length,
    floor: floor === undefined ? undefined : floor - pad * Math.sin(half),
  };
}

function finite(data: DrawingData, slot: string): number | undefined {
  const value = data.number(slot);
  return value !== undefined && Number.isFinite(value) ? value : undefined;
}

function positive(data: DrawingData, slot: string): number | undefined {
  const value = finite(data, slot);
  return value !== undefined && value > 0 ? value : undefined;
}

/** Point on the arm at a distance from the pivot, the arm leaning by an angle to the right. */
export function onArm(
  { pivot }: Pick<PedalLayout, 'pivot'>,
  distance: number,
  lean: number,
): Point {
  return [pivot[0] + distance * Math.sin(lean), pivot[1] + distance * Math.cos(lean)];
}
