import { DOMParser } from 'linkedom';
import { chartCSV } from '../chart/chart-csv.ts';
import { chartSVG } from '../chart/chart-svg.ts';
import { mapCSV } from '../chart/map-csv.ts';
import { mapSVG } from '../chart/map-svg.ts';
import type { DrawingOptions } from '../drawing/svg.ts';
import type { Problem } from '../language/problem.ts';
import type { Book } from '../sheet/book.ts';
import { createFrame } from '../sheet/create-frame.ts';
import type { Frame } from '../sheet/frame.ts';
import type { ChartStatement, Sheet } from '../sheet/sheet.ts';
import { outcomeOf, solve } from '../sheet/solve.ts';
import { sweepChart } from '../sheet/sweep.ts';
import { sweepMap } from '../sheet/sweep-two.ts';
import { nearest } from '../units/nearest.ts';
import type { ChartCommand } from './command.ts';
import { enterGivens } from './enter-givens.ts';
import { findSheet } from './find-sheet.ts';
import { type Loaded, loadBook } from './load-book.ts';
import { complainOf } from './open-sheet.ts';
import { DONE, type ExitCode, refuse, type Terminal } from './terminal.ts';

const HINT = 'See npx layshaft help chart';
/** Width in px of a chart that is a file of its own. */
const WIDTH = 760;

/** A chart that was worked, or a map, ready to be written. */
interface Worked {
  readonly svg: (options: DrawingOptions) => SVGElement;
  readonly csv: () => string;
}

/** `layshaft chart`: works a chart of a sheet and writes it as a drawing or a table. */
export function chart(command: ChartCommand, terminal: Terminal): ExitCode {
  const file = findSheet(terminal, command.sheet);
  if (file.path === undefined) return refuse(terminal, file.sentence, HINT);
  const loaded = loadBook(terminal, file);
  const statement = findChart(loaded.sheet, command.title);
  if (statement === undefined) return refuseTitle(terminal, loaded.sheet, command.title);
  const worked = workChart(loaded, statement, command);
  if (!('svg' in worked)) return complainOf(worked, terminal);
  return writeFiles(command, worked, terminal);
}

function listCharts(sheet: Sheet): readonly ChartStatement[] {
  return sheet.parts.flatMap((part) => (part.kind === 'chart' ? (part.chart ?? []) : []));
}

/** Capitals and blanks around the title count for nothing. */
function findChart(sheet: Sheet, title: string): ChartStatement | undefined {
  const wanted = title.trim().toLowerCase();
  return listCharts(sheet).find((chart) => chart.title.trim().toLowerCase() === wanted);
}

function refuseTitle(terminal: Terminal, sheet: Sheet, title: string): ExitCode {
  const titles = listCharts(sheet).map((chart) => chart.title);
  const near = nearest(title, titles);
  const offered = (near.length > 0 ? near : titles).map((each) => `"${each}"`).join(', ');
  const has = titles.length === 0 ? 'it has none' : `try ${offered}`;
  return refuse(terminal, `sheet ${sheet.name} has no chart "${title}"; ${has}`, HINT);
}

/** The chart's points, or the problems that leave it without any. */
function workChart(
  { book, sheet }: Loaded,
  statement: ChartStatement,
  { givens }: ChartCommand,
): Worked | readonly Problem[] {
  const frame = createFrame(book);
  const refused = enterGivens(book, frame, sheet.name, givens);
  if (refused.length > 0) return refused.map(({ problem }) => problem);
  solve(book, frame);
  const data =
    statement.against === undefined
      ? sweepChart(book, frame, statement, sheet.name)
      : sweepMap(book, frame, statement, sheet.name);
  if ('code' in data) return [data];
  const drawn =
    'series' in data
      ? data.series.some(({ points }) => points.some(([, y]) => Number.isFinite(y)))
      : data.values.some(Number.isFinite);
  const reasons = drawn ? [] : explainEmpty(book, frame, statement, sheet);
  if (reasons.length > 0) return reasons;
  return 'series' in data
    ? { svg: (options) => chartSVG(data, options), csv: () => chartCSV(data) }
    : { svg: (options) => mapSVG(data, options), csv: () => mapCSV(data) };
}

function explainEmpty(
  book: Book,
  frame: Frame,
  statement: ChartStatement,
  sheet: Sheet,
): readonly Problem[] {
  return statement.results.flatMap(({ name }) => {
    const cell = book.find(sheet.name, name);
    const outcome = cell && outcomeOf(book, frame, cell.index);
    return outcome && 'problem' in outcome ? [{ place: cell.place, ...outcome.problem }] : [];
  });
}

function writeFiles({ svg, csv }: ChartCommand, worked: Worked, terminal: Terminal): ExitCode {
  const files: [string, () => string][] = [];
  if (svg !== undefined) files.push([svg, () => drawSVG(worked)]);
  if (csv !== undefined) files.push([csv, worked.csv]);
  for (const [path, text] of files) {
    try {
      writeFile(terminal, path, text());
    } catch (error) {
      return refuse(terminal, `cannot write ${path}: ${(error as Error).message}`, HINT);
    }
  }
  return DONE;
}

function writeFile(terminal: Terminal, path: string, text: string): void {
  if (path === '-') terminal.write(text);
  else terminal.saveText(path, text);
}

/** A drawing that stands alone, as XML. */
function drawSVG({ svg }: Worked): string {
  const document = new DOMParser().parseFromString('<svg/>', 'image/svg+xml');
  const drawing = svg({
    document: document as unknown as Document,
    width: WIDTH,
    idPrefix: 'chart',
    standalone: true,
  });
  return `<?xml version="1.0" encoding="UTF-8"?>\n${drawing.toString()}\n`;
}
