import type { Kind } from '../language/kind.ts';
import { formatUnit } from '../units/format-unit.ts';
import type { System } from '../units/unit.ts';
import { displayAsRead } from './as-read.ts';
import type { Book } from './book.ts';
import type { Cell, LinkedFigure, LinkedFigures } from './cell.ts';
import { originOf } from './origin.ts';
import type { Display } from './sheet.ts';
import { displayIn, type Shown, showValue } from './show.ts';
import { describeRange } from './spread/spread-words.ts';
import type { Standing } from './standing.ts';

/** A table that is ready to set: texts only, units in the header or in a column of their own. */
export interface FigureTable {
  readonly title: string;
  readonly columns: readonly FigureColumn[];
  readonly rows: readonly (readonly string[])[];
}

export interface FigureColumn {
  readonly title: string;
  /** Set flush right, figure under figure. */
  readonly numeric: boolean;
}

const MISSING = '–';

/** Sets out figures: a column a list, or a row a value with how sure it is and how it is known. */
export function createFigureTable(
  title: string,
  { layout, figures }: LinkedFigures,
  source: Standing,
): FigureTable {
  return { title, ...(layout === 'columns' ? setColumns : setRows)(figures, source) };
}

function setColumns(
  figures: readonly LinkedFigure[],
  source: Standing,
): Omit<FigureTable, 'title'> {
  const columns = figures.map((figure) => readColumn(figure, source));
  const length = Math.max(...columns.map(({ items }) => items.length));
  return {
    columns: columns.map(({ title, numeric }) => ({ title, numeric })),
    rows: Array.from({ length }, (_, i) => columns.map(({ items }) => items[i] ?? MISSING)),
  };
}

function readColumn({ cell, label }: LinkedFigure, source: Standing) {
  const { kind } = source.book.cells[cell]!;
  const shown = showCell(cell, source);
  const unit = shown?.unit === undefined ? '' : formatUnit(shown.unit);
  return {
    title: unit === '' ? label : `${label}, ${unit}`,
    numeric: kind?.type === 'list',
    items: shown?.items ?? [],
  };
}

function setRows(figures: readonly LinkedFigure[], source: Standing): Omit<FigureTable, 'title'> {
  const doubts = figures.map(({ cell }) => writeDoubt(cell, source));
  const isDoubted = doubts.some((doubt) => doubt !== undefined);
  const rows = figures.map(({ cell, label }, i) => {
    const shown = showCell(cell, source);
    const unit = shown?.unit === undefined ? '' : formatUnit(shown.unit);
    const { worst = '', likely = '' } = doubts[i] ?? {};
    const known = howKnown(cell, source);
    const sheet = titleOfSheet(originOfFigure(source, cell), source.book);
    const doubt = isDoubted ? [worst, likely] : [];
    return [label, shown?.number ?? MISSING, unit, ...doubt, known, sheet];
  });
  return { columns: isDoubted ? WITH_DOUBT : WITHOUT_DOUBT, rows };
}

const column = (title: string, numeric = false): FigureColumn => ({ title, numeric });
const HEAD = [column('Figure'), column('Value', true), column('Unit')];
const TAIL = [column('Known'), column('Sheet')];
const WITHOUT_DOUBT = [...HEAD, ...TAIL];
const WITH_DOUBT = [...HEAD, column('Worst case', true), column('Likely, 95 %', true), ...TAIL];

function showCell(cell: number, { book, system, outcomeOf }: Standing): Shown | undefined {
  const { kind } = book.cells[cell]!;
  const outcome = outcomeOf(cell);
  if (kind === undefined || outcome.state !== 'value') return undefined;
  const display = displayAsRead(book, book.cells[cell]!, outcome.value);
  return showValue(outcome.value, kind, display, system());
}

/** Worst case and likely range in the figure's own unit; nothing where no reading is in doubt. */
function writeDoubt(
  cell: number,
  source: Standing,
): { readonly worst: string; readonly likely: string } | undefined {
  const { kind, display } = source.book.cells[cell]!;
  const [spread] = source.spreadOf(cell);
  if (spread === undefined || kind === undefined) return undefined;
  const show = (value: number) => showFiner(value, kind, display, source.system());
  const likely = spread.straight ? describeRange(spread.value, spread.likely, show) : MISSING;
  return { worst: describeRange(spread.value, spread.worst, show), likely };
}

function showFiner(value: number, kind: Kind, display: Display, system?: System): string {
  const { unit, resolution } = displayIn(display, system);
  const finer = resolution === undefined ? {} : { resolution: resolution / 10 };
  return showValue(value, kind, { ...(unit === undefined ? {} : { unit }), ...finer }, system)
    .number;
}

function howKnown(cell: number, source: Standing): string {
  const root = originOfFigure(source, cell);
  if (source.outcomeOf(root.index).state !== 'value') return 'not known yet';
  if (root.role !== 'given') return 'worked';
  return source.isEntered(root) ? 'entered' : 'assumed';
}

function originOfFigure({ book }: Standing, index: number): Cell {
  const cell = book.cells[index]!;
  return originOf(book, cell) ?? cell;
}

function titleOfSheet({ sheet: name }: Cell, { sheets }: Book): string {
  const sheet = sheets.find((one) => one.name === name)!;
  return `${sheet.number ?? ''} ${sheet.title}`.trim();
}
