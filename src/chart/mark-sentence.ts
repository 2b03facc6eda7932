import type { Axis, ChartData, Limits, Mark, Series } from '../sheet/chart-data.ts';
import { formatOn } from './chart-number.ts';
import { findCrossings, findInside, valueAt } from './line-crossings.ts';
import { describeShape, type LineShape } from './line-shape.ts';
import { joinWords, listWords, nameInList, nameInSentence } from './words.ts';

/** More crossings than these are counted, not listed. */
const MOST_CROSSINGS = 3;

/** Which lines meet a level, and where; which stay on one side of it. */
export function sayLevel(data: ChartData, { value, label }: Mark): string {
  const { x, y, series } = data;
  const level = joinWords(label, formatOn(y, value));
  const meetings = series.flatMap(({ label: name, points }) => {
    const crossings = findCrossings(points, value);
    return crossings.length === 0 ? [] : [{ name, at: sayCrossings(x, crossings) }];
  });
  if (meetings.length === 0) return saySides(data, value, level);
  if (series.length === 1) return `it meets ${level}, ${meetings[0]!.at}`;
  const rest = saySides(data, value, 'it');
  const told = listWords(meetings.map(({ name, at }) => `${nameInList(name)} ${at}`));
  return [`${level}, is met by ${told}`, rest].filter((part) => part !== '').join('; ');
}

type Stance = 'below' | 'up to' | 'above' | 'down to';

/** Nearer to a level than this share of the axis, a line comes up or down to it. */
const TOUCH = 1e-3;

const STANCES: readonly (readonly [stance: Stance, one: string, several: string])[] = [
  ['up to', 'comes up to', 'come up to'],
  ['down to', 'comes down to', 'come down to'],
  ['below', 'stays below', 'stay below'],
  ['above', 'stays above', 'stay above'],
];

function saySides({ y, series }: ChartData, value: number, level: string): string {
  const stances = series.map((line) => stanceOf(line, y, value));
  const told = STANCES.flatMap(([stance, one, several]) => {
    const names = series.filter((_, i) => stances[i] === stance).map(({ label }) => label);
    if (names.length === 0) return [];
    if (series.length === 1) return [`it ${one} ${level}`];
    if (names.length === series.length) return [`every line ${one} ${level}`];
    return [`${listWords(names.map(nameInList))} ${names.length === 1 ? one : several} ${level}`];
  });
  return told.join('; ');
}

function stanceOf({ points }: Series, y: Axis, value: number): Stance | undefined {
  const { highest, lowest } = describeShape(points, [y.from, y.to]);
  const touch = Math.abs(y.to - y.from) * TOUCH;
  if (highest[1] < value) return highest[1] >= value - touch ? 'up to' : 'below';
  if (lowest[1] > value) return lowest[1] <= value + touch ? 'down to' : 'above';
  return undefined;
}

function sayCrossings(x: Axis, crossings: readonly number[]): string {
  if (crossings.length > MOST_CROSSINGS)
    return `${crossings.length} times, first at ${formatOn(x, crossings[0]!)}`;
  return `at ${listWords(crossings.map((crossing) => formatOn(x, crossing)))}`;
}

/** The values at a mark on the x axis. */
export function sayPlace({ x, y, series }: ChartData, { value, label }: Mark): string {
  const at = joinWords(label, formatOn(x, value));
  const known = series
    .map((line) => ({ line, height: valueAt(line.points, value) }))
    .filter(({ height }) => Number.isFinite(height));
  if (known.length === 0) return `${at}, is marked`;
  if (series.length === 1)
    return `at ${at}, ${nameInSentence(known[0]!.line.label || y.label)} is ${formatOn(y, known[0]!.height)}`;
  const told = known.map(({ line, height }) => `${nameInList(line.label)} ${formatOn(y, height)}`);
  return `at ${at}: ${told.join(', ')}`;
}

/** Where each line lies in a window. */
export function sayWindow({ x, y, series }: ChartData, { least, most, label }: Limits): string {
  const window = joinWords(label, `${formatOn(y, least)} to ${formatOn(y, most)}`);
  const groups = new Map<string, string[]>();
  for (const { label: name, points } of series) {
    const shape = describeShape(points, [y.from, y.to]);
    if (shape.course === 'nothing') continue;
    const where = sayInside(x, shape, findInside(points, least, most));
    groups.set(where, [...(groups.get(where) ?? []), nameInList(name)]);
  }
  const told = [...groups].map(([where, names]) =>
    names.length === series.length && names.length > 1
      ? `every line lies ${where}`
      : `${listWords(names)} ${names.length === 1 ? 'lies' : 'lie'} ${where}`,
  );
  if (told.length === 0) return '';
  const [only] = groups.keys();
  if (series.length === 1) return `it lies ${only!.replace(' ', ` ${window}, `)}`;
  return `${window}: ${told.join('; ')}`;
}

function sayInside(
  x: Axis,
  { first, last }: LineShape,
  spans: readonly (readonly [number, number])[],
): string {
  if (spans.length === 0) return 'outside throughout';
  const [only] = spans;
  if (spans.length === 1 && only![0] === first[0] && only![1] === last[0])
    return 'inside throughout';
  const stretches = spans.map(([from, to]) => `from ${formatOn(x, from)} to ${formatOn(x, to)}`);
  return `inside ${listWords(stretches)}`;
}
