import { chartCSV } from '../chart/chart-csv.ts';
import { chartSentence } from '../chart/chart-sentence.ts';
import { chartSVG } from '../chart/chart-svg.ts';
import { formatCSV } from '../chart/csv.ts';
import { mapCSV } from '../chart/map-csv.ts';
import { mapSentence } from '../chart/map-sentence.ts';
import { mapSVG } from '../chart/map-svg.ts';
import { drawChain } from '../drawing/chain.ts';
import { describeChain } from '../drawing/chain-data.ts';
import { findDrawing } from '../drawing/drawing-kinds.ts';
import { drawGauge } from '../drawing/gauge.ts';
import { describeGauge } from '../drawing/gauge-words.ts';
import type { Check } from '../sheet/cell.ts';
import type { ChartData } from '../sheet/chart-data.ts';
import { createDrawingData } from '../sheet/drawing-data.ts';
import { createFigureTable, type FigureTable } from '../sheet/figure-table.ts';
import { readChain, type StackCell } from '../sheet/read-chain.ts';
import { readGauge } from '../sheet/read-gauge.ts';
import type { ChartStatement, Part, Sheet } from '../sheet/sheet.ts';
import type { Standing } from '../sheet/standing.ts';
import { sweepChart } from '../sheet/sweep.ts';
import { sweepMap } from '../sheet/sweep-two.ts';
import { verdictOf } from '../sheet/verdict.ts';
import { chartCaption, gaugeCaption } from './caption.ts';

/** Something of a sheet that can be printed by itself. */
export interface Figure {
  readonly kind: 'chart' | 'stack' | 'gauge' | 'drawing';
  readonly sheet: string;
  readonly title: string;
  /** Fit for a file name, unique in the book: `70-stack-gap-with-the-piston-fully-in`. */
  readonly id: string;
  /** A sentence or two to stand under it. */
  readonly caption: string;
  /** All that it shows, for those who do not see it. */
  readonly alt: string;
  /** Where its formula or its window comes from. */
  readonly source?: string;
  /** Draws for a width in px. */
  draw(document: Document, width: number): Element;
  /** Its numbers, units in the head. */
  csv(): string;
}

type Found = Omit<Figure, 'sheet' | 'id'>;

/** All that can be printed of a sheet, in its order. What has an error is left out. */
export function listFigures(standing: Standing, sheet: Sheet): readonly Figure[] {
  const found = sheet.parts.flatMap((part) => readPart(standing, sheet, part));
  const taken = new Map<string, number>();
  return found.map((figure) => {
    const name = nameFile(sheet, figure.kind, figure.title);
    const count = (taken.get(name) ?? 0) + 1;
    taken.set(name, count);
    return { ...figure, sheet: sheet.name, id: count === 1 ? name : `${name}-${count}` };
  });
}

/** The tables of figures of a sheet, in its order. */
export function listTables(standing: Standing, sheet: Sheet): readonly FigureTable[] {
  return standing.book.figures.flatMap(({ sheet: name, statement, linked }) =>
    name === sheet.name && linked !== undefined
      ? [createFigureTable(statement.title, linked, standing)]
      : [],
  );
}

/** Lower-case letters, digits and hyphens of a title, with what stands before it. */
export function nameFile({ number, name }: Sheet, kind: string, title: string): string {
  const words = title
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60);
  return [number ?? name, kind, words].filter((part) => part !== '').join('-');
}

function readPart(standing: Standing, sheet: Sheet, part: Part): readonly Found[] {
  switch (part.kind) {
    case 'chart':
      return readChart(standing, sheet, part.chart);
    case 'stack':
      return readStack(standing, sheet, part.stack?.name);
    case 'check':
      return part.layout === 'gauges' ? readGauges(standing, sheet, part.statements) : [];
    case 'drawing':
      return readDrawing(standing, sheet, part.drawing);
    default:
      return [];
  }
}

function readChart(
  standing: Standing,
  sheet: Sheet,
  statement: (Part & { kind: 'chart' })['chart'],
): readonly Found[] {
  const linked = standing.book.charts.some(
    (chart) => chart.statement === statement && chart.linked,
  );
  if (statement === undefined || !linked) return [];
  if (statement.against !== undefined) return readMap(standing, sheet, statement);
  const data = sweepChart(
    standing.book,
    standing.frame(),
    statement,
    sheet.name,
    standing.system(),
  );
  return 'code' in data ? [] : [chartFigure(data)];
}

function readMap(standing: Standing, sheet: Sheet, statement: ChartStatement): readonly Found[] {
  const { book, frame, system } = standing;
  const data = sweepMap(book, frame(), statement, sheet.name, system());
  if ('code' in data) return [];
  return [
    {
      kind: 'chart',
      title: data.title,
      caption: `${data.title}.`,
      alt: mapSentence(data),
      draw: (document, width) => mapSVG(data, paper(document, width)),
      csv: () => mapCSV(data),
    },
  ];
}

/** A chart as a figure, wherever its data comes from. */
export function chartFigure(data: ChartData): Found {
  return {
    kind: 'chart',
    title: data.title,
    caption: chartCaption(data),
    alt: chartSentence(data),
    draw: (document, width) =>
      chartSVG(data, { document, width, idPrefix: 'figure', standalone: true }),
    csv: () => chartCSV(data),
  };
}

function readStack(standing: Standing, sheet: Sheet, name: string | undefined): readonly Found[] {
  const cell = name === undefined ? undefined : standing.book.find(sheet.name, name);
  if (cell?.role !== 'stack' || cell.kind === undefined) return [];
  const data = readChain(cell as StackCell, standing);
  const terms = data.terms.map(({ sign, label, text }) => [sign === 1 ? '+' : '−', label, text]);
  return [
    {
      kind: 'stack',
      title: cell.label,
      caption: `${cell.label}: ${data.total.text}.`,
      alt: describeChain(data),
      ...(cell.source === undefined ? {} : { source: cell.source }),
      draw: (document, width) => drawChain(data, paper(document, width)),
      csv: () =>
        formatCSV([['Sign', 'Term', 'Value'], ...terms, ['=', data.total.label, data.total.text]]),
    },
  ];
}

function readGauges(
  standing: Standing,
  sheet: Sheet,
  statements: readonly Check['statement'][],
): readonly Found[] {
  return statements.flatMap((statement) => {
    const check = standing.book.checks.find((one) => one.statement === statement);
    const subject = standing.book.cells[check?.subject ?? -1];
    const isDrawn = subject?.kind?.type === 'quantity' || subject?.kind?.type === 'list';
    if (check === undefined || subject === undefined || !isDrawn || check.sheet !== sheet.name)
      return [];
    return [readOneGauge(standing, check, subject)];
  });
}

function readOneGauge(
  standing: Standing,
  check: Check,
  subject: Standing['book']['cells'][number],
): Found {
  const { label, source } = check.statement;
  const data = readGauge(check, subject, standing);
  const verdict = verdictOf(standing.book, standing.frame(), check);
  const worst = 'worst' in verdict ? verdict.worst : 0;
  return {
    kind: 'gauge',
    title: label,
    caption: gaugeCaption(data, worst),
    alt: describeGauge(data),
    ...(source === undefined ? {} : { source }),
    draw: (document, width) => drawGauge(data, paper(document, width)),
    csv: () =>
      formatCSV([
        ['Name', 'Value', 'Least', 'Most'],
        ...data.values.map((value) => [
          value.label ?? label,
          value.text,
          data.least?.text ?? '',
          data.most?.text ?? '',
        ]),
      ]),
  };
}

function readDrawing(
  standing: Standing,
  sheet: Sheet,
  statement: (Part & { kind: 'drawing' })['drawing'],
): readonly Found[] {
  const drawing = standing.book.drawings.find(
    (one) => one.statement === statement && one.sheet === sheet.name,
  );
  if (drawing?.linked === undefined) return [];
  const { linked } = drawing;
  const { title } = drawing.statement;
  const data = createDrawingData(
    title,
    linked,
    (formula) => standing.workOut(formula),
    standing.system(),
  );
  const kind = findDrawing(linked.plan.name)!;
  const words = kind.describe(data);
  const rows = linked.slots.map(({ slot }) => [
    slot.name.replaceAll('_', ' '),
    data.show(slot.name),
  ]);
  return [
    {
      kind: 'drawing',
      title,
      caption: `${title}.`,
      alt: words,
      draw: (document, width) => kind.draw(data, { document, width, idPrefix: 'figure' }),
      csv: () => formatCSV([['Name', 'Value'], ...rows]),
    },
  ];
}

function paper(document: Document, width: number) {
  return { document, width, idPrefix: 'figure', standalone: true };
}
