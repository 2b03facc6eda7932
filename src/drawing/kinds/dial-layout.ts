import { countPositions, FOR_CIRCLE, fitHarmonics } from '../../trade/harmonic-fit.ts';
import { atClock, formatClock } from '../clock.ts';
import type { DrawingData } from '../declaration.ts';
import { type Lettering, LINE } from '../lettering.ts';
import { textWidth } from '../text-width.ts';

export const SIZE = 13;
/** The deepest reading is drawn this share of the circle's radius away from it. */
const DEPTH = 0.26;
/** Radius of the circle where there is room for it. */
const LARGEST = 150;
const SMALLEST = 40;
const TURN = 2 * Math.PI;
/** From the outermost reading to its label. */
const AWAY = 12;
const STEPS = 120;

type Point = readonly [x: number, y: number];

/** A reading in place: on the exaggerated wall, with the foot of its label's line. */
export interface DialPoint {
  readonly at: Point;
  readonly rim: Point;
  readonly letters: readonly Lettering[];
}

export interface DialLayout {
  readonly centre: Point;
  readonly radius: number;
  /** How many px a metre of reading is drawn; 0 while nothing tells. */
  readonly scale: number;
  readonly points: readonly DialPoint[];
  /** The wall that offset and oval make, exaggerated. */
  readonly wall: readonly Point[];
  /** True where the labels stand round the circle and not in the key. */
  readonly labelled: boolean;
  readonly foot: number;
}

interface Reading {
  readonly angle: number;
  readonly value: number;
  readonly time: string;
  readonly text: string;
}

/** Where everything on a dial goes, in px, for a width. */
export function layOutDial(data: DrawingData, width: number): DialLayout {
  const readings = listReadings(data);
  const room = Math.max(0, ...readings.map(labelWidth)) + AWAY;
  const radius = clamp((width / 2 - room) / (1 + DEPTH));
  const centre: Point = [width / 2, radius * (1 + DEPTH) + AWAY + 2 * SIZE * LINE + 2];
  const fit = fitOf(readings);
  const scale = scaleOf(readings, fit, data, radius);
  const points = readings.map((reading) => placeReading(reading, fit.mean, centre, radius, scale));
  return {
    centre,
    radius,
    scale,
    points,
    wall: traceWall(fit, centre, radius, scale),
    labelled: haveRoom(points, width),
    foot: 2 * centre[1],
  };
}

function clamp(radius: number): number {
  return Math.max(SMALLEST, Math.min(LARGEST, radius));
}

/** Readings that have a position and are numbers. */
export function listReadings(data: DrawingData): readonly Reading[] {
  const angles = data.list('angles') ?? [];
  const values = data.list('readings') ?? [];
  return values.flatMap((value, i) => {
    const angle = angles[i];
    if (angle === undefined || !Number.isFinite(angle) || !Number.isFinite(value)) return [];
    return [{ angle, value, time: formatClock(angle), text: data.show('readings', i) }];
  });
}

function labelWidth({ time, text }: Reading): number {
  return Math.max(textWidth(time, SIZE, 700), textWidth(text, SIZE));
}

interface Fit {
  readonly mean: number;
  readonly first: readonly [number, number];
  readonly second: readonly [number, number];
}

/** Without three positions there is no wall; the readings still stand round their mean. */
function fitOf(readings: readonly Reading[]): Fit & { readonly known: boolean } {
  const angles = readings.map(({ angle }) => angle);
  const values = readings.map(({ value }) => value);
  if (countPositions(angles) >= FOR_CIRCLE) return { ...fitHarmonics(values, angles), known: true };
  const mean =
    values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
  return { mean, first: [0, 0], second: [0, 0], known: false };
}

/** One scale for readings, offset and dowel, far larger than that of the circle. */
function scaleOf(
  readings: readonly Reading[],
  { mean }: Fit,
  data: DrawingData,
  radius: number,
): number {
  const sizes = [
    ...readings.map(({ value }) => value - mean),
    data.number('offset') ?? 0,
    data.number('dowel') ?? 0,
  ].map(Math.abs);
  const largest = Math.max(0, ...sizes.filter(Number.isFinite));
  return largest > 0 ? (DEPTH * radius) / largest : 0;
}

/** A high reading is a wall that stands nearer to the crank's axis. */
function placeReading(
  { angle, value, time, text }: Reading,
  mean: number,
  centre: Point,
  radius: number,
  scale: number,
): DialPoint {
  const outer = radius * (1 + DEPTH) + AWAY / 2;
  const [wide, high] = [
    Math.max(textWidth(time, SIZE, 700), textWidth(text, SIZE)),
    2 * SIZE * LINE,
  ];
  const [x, y] = atClock(centre, outer + AWAY / 2, angle);
  const [left, top] = [
    x + (wide / 2) * Math.sin(angle),
    y - (high / 2) * Math.cos(angle) - high / 2,
  ];
  const base = { x: left, anchor: 'middle', size: SIZE } as const;
  return {
    at: atClock(centre, radius - (value - mean) * scale, angle),
    rim: atClock(centre, outer, angle),
    letters: [
      { ...base, lines: [time], top, weight: 700 },
      { ...base, lines: [text], top: top + SIZE * LINE },
    ],
  };
}

function traceWall(
  { first, second, known }: Fit & { readonly known: boolean },
  centre: Point,
  radius: number,
  scale: number,
): readonly Point[] {
  if (!known || scale === 0) return [];
  return Array.from({ length: STEPS }, (_, i) => {
    const angle = (i / STEPS) * TURN;
    const height =
      first[0] * Math.cos(angle) +
      first[1] * Math.sin(angle) +
      second[0] * Math.cos(2 * angle) +
      second[1] * Math.sin(2 * angle);
    return atClock(centre, radius - height * scale, angle);
  });
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function haveRoom(points: readonly DialPoint[], width: number): boolean {
  const boxes = points.map(({ letters }) => boxOf(letters));
  return boxes.every(
    (a, i) => a.left >= 0 && a.right <= width && boxes.every((b, j) => j <= i || !overlap(a, b)),
  );
}

function boxOf(letters: readonly Lettering[]): Box {
  const half =
    Math.max(...letters.map(({ lines, weight }) => textWidth(lines[0]!, SIZE, weight))) / 2;
  const { x, top } = letters[0]!;
  return { left: x - half, right: x + half, top, bottom: top + 2 * SIZE * LINE };
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right + 2 && b.left < a.right + 2 && a.top < b.bottom && b.top < a.bottom;
}
