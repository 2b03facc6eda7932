import type { Problem } from '../language/problem.ts';
import type { System } from '../units/unit.ts';
import type { Book } from './book.ts';
import type { Chart, Formula, LinkedChart } from './cell.ts';
import type { Frame } from './frame.ts';
import type { MapData } from './map-data.ts';
import { createProbe } from './probe.ts';
import type { ChartStatement } from './sheet.ts';
import { explainCell } from './solve.ts';
import { type AxisUnit, axisUnit, limitValues } from './sweep-axis.ts';

/** Places along each axis: contour lines are straight between them. */
const PLACES = 41;

/**
 * Works a result over two values at once, on a grid: the sheet is worked again at each point. The frame
 * itself stays as it is. A value that is worked out is taken as if it were measured.
 *
 * @param system the units of the page; undefined for the sheet's own
 * @returns numbers in the units of the axes; a problem where the map or a range has no value
 */
export function sweepMap(
  book: Book,
  frame: Frame,
  statement: ChartStatement,
  sheet: string,
  system?: System,
): MapData | Problem {
  const chart = book.charts.find((each) => each.statement === statement && each.sheet === sheet)!;
  const { linked } = chart;
  if (linked === undefined) return chart.problem!;
  const { from, to, against } = linked;
  const ends = [from, to, against!.from, against!.to].map((end) =>
    numberOf(book, frame, chart, end),
  );
  const fault = ends.find((end) => typeof end !== 'number');
  if (fault !== undefined) return fault as Problem;
  const [a, b, c, d] = ends as [number, number, number, number];
  // Ends that name values may have passed each other.
  const range = [Math.min(a, b), Math.max(a, b), Math.min(c, d), Math.max(c, d)] as const;
  return drawMap(book, frame, chart, range, system);
}

function numberOf(book: Book, frame: Frame, chart: Chart, formula: Formula): number | Problem {
  const value = formula.code.run(frame.memory) as number;
  if (Number.isFinite(value)) return value;
  return explainCell(book, frame, { sheet: chart.sheet, name: chart.statement.title }, formula);
}

function drawMap(
  book: Book,
  frame: Frame,
  { linked, statement, sheet }: Chart,
  [left, right, bottom, top]: readonly [number, number, number, number],
  system: System | undefined,
): MapData {
  const { over, results, against, xUnit, yUnit } = linked!;
  const units = [xUnit, against!.unit, yUnit].map((unit) => axisUnit(unit, system));
  const [x, y, z] = units as [AxisUnit, AxisUnit, AxisUnit];
  const probe = createProbe(book, frame, [over, against!.over], results);
  const [across, up] = [placesBetween(left, right), placesBetween(bottom, top)];
  const values = up.flatMap((b) => across.map((a) => probe.at([a, b])[0]! / z.factor));
  const label = (name: string) => book.find(sheet, name)?.label ?? name;
  const axis = (of: AxisUnit, from: number, to: number, words: string) => ({
    label: words,
    unit: of.symbol,
    from: from / of.factor,
    to: to / of.factor,
  });
  return {
    title: statement.title,
    x: axis(x, left, right, statement.xLabel ?? label(statement.over.name)),
    y: axis(y, bottom, top, statement.yLabel ?? label(statement.against!.over.name)),
    z: { label: label(statement.results[0]!.name), unit: z.symbol, ...leastAndMost(values) },
    xs: across.map((place) => place / x.factor),
    ys: up.map((place) => place / y.factor),
    values,
    marks: marksOf(frame, linked!, { x: x.factor, y: y.factor }),
    limits: limitValues(frame, linked!, z.factor),
    now: presentOf(frame, linked!, [x, y, z]),
  };
}

function placesBetween(from: number, to: number): readonly number[] {
  return Array.from({ length: PLACES }, (_, i) => from + ((to - from) * i) / (PLACES - 1));
}

function leastAndMost(values: readonly number[]): { readonly from: number; readonly to: number } {
  const known = values.filter(Number.isFinite);
  return known.length === 0
    ? { from: 0, to: 1 }
    : { from: Math.min(...known), to: Math.max(...known) };
}

function marksOf({ memory }: Frame, { marks }: LinkedChart, factors: { x: number; y: number }) {
  return marks.flatMap(({ axis, formula, label }) => {
    const value = (formula.code.run(memory) as number) / factors[axis];
    return Number.isFinite(value) ? [{ axis, value, label }] : [];
  });
}

function presentOf(
  { memory: { numbers } }: Frame,
  { over, against, results }: LinkedChart,
  units: readonly [AxisUnit, AxisUnit, AxisUnit],
): MapData['now'] {
  const cells = [over, against!.over, results[0]!];
  const [x, y, z] = cells.map((cell, i) => numbers[cell]! / units[i]!.factor);
  return Number.isFinite(x! + y! + z!) ? { x: x!, y: y!, z: z! } : undefined;
}
