import type { Axis } from '../sheet/chart-data.ts';
import type { MapData } from '../sheet/map-data.ts';
import { formatOn, formatTo, resolutionOf } from './chart-number.ts';
import { listLevels } from './map-levels.ts';
import { listWords, lowerFirst, upperFirst } from './words.ts';

/** What a map shows, in plain sentences made from its data. */
export function mapSentence(data: MapData): string {
  return joinParts([
    sayWhat(data),
    saySpan(data),
    sayPresent(data),
    ...sayWindows(data),
    sayLines(data),
  ]);
}

/** Where the job stands on a map, and how its windows lie: what sets it apart from another of its kind. */
export function mapStanding(data: MapData): string {
  return joinParts([sayPresent(data), ...sayWindows(data)]);
}

function joinParts(parts: readonly string[]): string {
  return parts
    .filter((part) => part !== '')
    .map((part) => `${upperFirst(part)}.`)
    .join(' ');
}

function sayWhat({ x, y, z }: MapData): string {
  const range = (axis: Axis) =>
    `${lowerFirst(axis.label)} from ${formatOn(axis, axis.from)} to ${formatOn(axis, axis.to)}`;
  return `${z.label} over ${range(x)} and ${range(y)}`;
}

function saySpan(data: MapData): string {
  const { values, z } = data;
  if (!values.some(Number.isFinite)) return 'It has no value anywhere on the map';
  if (z.from === z.to) return `It is ${formatOn(z, z.from)} throughout`;
  return `It is least, ${formatOn(z, z.from)}, at ${placeOf(data, z.from)}, and most, ${formatOn(z, z.to)}, at ${placeOf(data, z.to)}`;
}

function placeOf({ xs, ys, x, y, values }: MapData, value: number): string {
  const at = values.indexOf(value);
  return `${formatOn(x, xs[at % xs.length]!)} and ${formatOn(y, ys[Math.floor(at / xs.length)]!)}`;
}

function sayPresent({ x, y, z, now }: MapData): string {
  if (now === undefined) return '';
  return `The job stands at ${formatOn(x, now.x)} and ${formatOn(y, now.y)}, with ${formatOn(z, now.z)}`;
}

function sayWindows({ z, limits, now, values }: MapData): readonly string[] {
  return limits.map(({ least, most, label }) => {
    const inside = values.filter((value) => value >= least && value <= most).length;
    const known = values.filter(Number.isFinite).length;
    const share = known === 0 ? 0 : Math.round((100 * inside) / known);
    const where =
      now === undefined
        ? ''
        : now.z >= least && now.z <= most
          ? ', and the job lies in it'
          : ', and the job lies outside it';
    return `${label}, ${formatOn(z, least)} to ${formatOn(z, most)}, takes up ${share} % of the map${where}`;
  });
}

function sayLines(data: MapData): string {
  const levels = listLevels(data);
  if (levels.length === 0) return '';
  const numbers = levels.map((level) => formatTo(level, resolutionOf(data.z)));
  return `Lines at ${listWords(numbers)}${data.z.unit === '' ? '' : ` ${data.z.unit}`}`;
}
