import type { Problem } from '../language/problem.ts';
import type { System } from '../units/unit.ts';
import type { Book } from './book.ts';
import type { Chart, Formula, LinkedChart } from './cell.ts';
import type { ChartData, Series } from './chart-data.ts';
import type { Frame } from './frame.ts';
import { createProbe } from './probe.ts';
import { sampleCurve } from './sample-curve.ts';
import type { ChartStatement } from './sheet.ts';
import { explainCell } from './solve.ts';
import { axisUnit, extent, finiteOr, limitValues } from './sweep-axis.ts';
import { sweepFamily } from './sweep-family.ts';

/**
 * Draws results over a range of one given: the sheet is worked again at each point. The frame
 * itself stays as it is.
 *
 * @param system the units of the page; undefined for the sheet's own
 * @returns numbers in the units of the axes; a problem where the chart or its range has no value
 */
export function sweepChart(
  book: Book,
  frame: Frame,
  statement: ChartStatement,
  sheet: string,
  system?: System,
): ChartData | Problem {
  const chart = book.charts.find((each) => each.statement === statement && each.sheet === sheet)!;
  const { linked } = chart;
  if (linked === undefined) return chart.problem!;
  if (linked.against !== undefined) return sweepFamily(book, frame, chart, system);
  const ends = [linked.from, linked.to].map((formula) => numberOf(book, frame, chart, formula));
  const fault = ends.find((end) => typeof end !== 'number');
  if (fault !== undefined) return fault as Problem;
  // Ends that name values may have passed each other.
  const [from, to] = (ends as number[]).toSorted((a, b) => a - b) as [number, number];
  return drawChart(book, frame, chart, [from, to], system);
}

function numberOf(book: Book, frame: Frame, chart: Chart, formula: Formula): number | Problem {
  const value = formula.code.run(frame.memory) as number;
  if (Number.isFinite(value)) return value;
  return explainCell(book, frame, { sheet: chart.sheet, name: chart.statement.title }, formula);
}

function drawChart(
  book: Book,
  frame: Frame,
  { linked, statement, sheet }: Chart,
  [from, to]: readonly [number, number],
  system: System | undefined,
): ChartData {
  const { over, results, xUnit, yUnit } = linked!;
  const [x, y] = [axisUnit(xUnit, system), axisUnit(yUnit, system)];
  const probe = createProbe(book, frame, [over], results);
  const at = (place: number) => probe.at([place]);
  const points = sampleCurve(at, from, to);
  const present = frame.memory.numbers[over]!;
  const now = Number.isFinite(present) ? at(present) : [];
  const series = labelSeries(
    book,
    frame,
    linked!,
    Math.max(...points.map(({ ys }) => ys.length)),
    sheet,
  ).map(
    (label, i): Series => ({
      label,
      points: points.map((point) => [point.x / x.factor, (point.ys[i] ?? Number.NaN) / y.factor]),
      now: finiteOr(now[i], y.factor),
    }),
  );
  return {
    title: statement.title,
    x: {
      label: statement.xLabel ?? labelOf(book, sheet, statement.over.name),
      unit: x.symbol,
      from: from / x.factor,
      to: to / x.factor,
    },
    y: {
      label: statement.yLabel ?? book.cells[results[0]!]!.label,
      unit: y.symbol,
      ...extent(series),
    },
    series,
    marks: markValues(frame, linked!, { x: x.factor, y: y.factor }),
    limits: limitValues(frame, linked!, y.factor),
    now: finiteOr(present, x.factor),
  };
}

function labelSeries(
  book: Book,
  frame: Frame,
  linked: LinkedChart,
  count: number,
  sheet: string,
): readonly string[] {
  const { results, lines } = linked;
  const names =
    lines === undefined
      ? []
      : ((frame.memory.others[lines] as readonly string[] | undefined) ?? []);
  const labels = results.flatMap((index) => {
    const { kind, name } = book.cells[index]!;
    const label = labelOf(book, sheet, name);
    if (kind!.type !== 'list') return [label];
    const list = frame.memory.others[index] as Float64Array | undefined;
    const length = list?.length ?? count - (results.length - 1);
    return Array.from({ length }, (_, i) => names[i] ?? (length === 1 ? label : `${i + 1}`));
  });
  return Array.from({ length: count }, (_, i) => labels[i] ?? `${i + 1}`);
}

function labelOf(book: Book, sheet: string, name: string): string {
  return book.find(sheet, name)?.label ?? name;
}

function markValues({ memory }: Frame, { marks }: LinkedChart, factors: { x: number; y: number }) {
  return marks.flatMap(({ axis, formula, label }) => {
    const value = (formula.code.run(memory) as number) / factors[axis];
    return Number.isFinite(value) ? [{ axis, value, label }] : [];
  });
}
