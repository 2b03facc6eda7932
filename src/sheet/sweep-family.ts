import type { Problem } from '../language/problem.ts';
import { formatNumber } from '../units/format-number.ts';
import { joinUnit } from '../units/format-quantity.ts';
import type { System } from '../units/unit.ts';
import type { Book } from './book.ts';
import type { Chart } from './cell.ts';
import type { ChartData, Series } from './chart-data.ts';
import type { Frame } from './frame.ts';
import type { MapData } from './map-data.ts';
import { extent } from './sweep-axis.ts';
import { sweepMap } from './sweep-two.ts';

/** Lines that a map is shown by. */
const LINES = 5;

/** A map as a chart of lines, one for each of a few values of what runs up: for whatever draws lines only. */
export function sweepFamily(
  book: Book,
  frame: Frame,
  { statement, sheet }: Chart,
  system: System | undefined,
): ChartData | Problem {
  const map = sweepMap(book, frame, statement, sheet, system);
  if ('code' in map) return map;
  const series = Array.from({ length: LINES }, (_, i) =>
    lineOf(map, Math.round(((map.ys.length - 1) * i) / (LINES - 1))),
  );
  return {
    title: map.title,
    x: map.x,
    y: { label: map.z.label, unit: map.z.unit, ...extent(series) },
    series,
    marks: map.marks.filter(({ axis }) => axis === 'x'),
    limits: map.limits,
    now: undefined,
  };
}

function lineOf({ xs, ys, y, values }: MapData, row: number): Series {
  const number = formatNumber(ys[row]!, { figures: 3 });
  return {
    label: y.unit === '' ? number : joinUnit(number, { symbol: y.unit }),
    points: xs.map((x, i) => [x, values[row * xs.length + i]!] as const),
    now: undefined,
  };
}
