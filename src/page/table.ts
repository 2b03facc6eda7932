import type { Kind, Row } from '../language/kind.ts';
import type { Cell } from '../sheet/cell.ts';
import type { Sheet, TableBlock, TableColumn } from '../sheet/sheet.ts';
import { showValue } from '../sheet/show.ts';
import { unitIn } from '../units/counterpart.ts';
import { formatUnit } from '../units/format-unit.ts';
import type { System, Unit } from '../units/unit.ts';
import { type Desk, findCell } from './desk.ts';
import { fill, h } from './element.ts';
import { createRow, sourceNote } from './margin.ts';
import { createScrollBox } from './scroll-box.ts';
import type { View } from './view.ts';

/** A reference table. On a page in the other system its columns are converted. */
export function createReferenceTable(desk: Desk, sheet: Sheet, block: TableBlock): View {
  const { table } = block;
  const cell = table && findCell(desk, sheet.name, table.name);
  if (table === undefined || cell?.role !== 'table' || cell.statement !== table) {
    return { element: h('div'), cells: [], refresh: () => {} };
  }
  const head = h('thead');
  const body = h('tbody');
  const grid = h('table', {}, h('caption', {}, table.label), head, body);
  const box = createScrollBox('wide', table.label, grid);
  box.id = cell.name;

  function refresh(): void {
    const system = desk.system();
    const columns = table!.columns.map((column) => readColumn(column, cell!, system));
    fill(head, h('tr', {}, ...columns.map(createHeader)));
    const rows = table!.rows.map((texts, i) => createBodyRow(columns, texts, rowsOf(cell!)[i]));
    fill(body, ...rows);
  }

  refresh();
  return {
    element: h(
      'div',
      { class: 'block', role: 'group', 'aria-label': table.label },
      createRow(box, sourceNote(table.source)),
    ),
    cells: [cell.index],
    refresh,
  };
}

interface ShownColumn {
  readonly name: string;
  readonly kind: Kind | undefined;
  readonly unit: Unit | undefined;
  /** Cells as the sheet has them, unless the unit is another one on this page. */
  readonly converted: boolean;
  readonly system: System;
}

function readColumn(column: TableColumn, cell: Cell, system: System): ShownColumn {
  const unit = column.unit && unitIn(column.unit, system);
  const kind = cell.kind?.type === 'table' ? cell.kind.columns.get(column.name) : undefined;
  return { name: column.name, kind, unit, converted: unit !== column.unit, system };
}

function createHeader({ name, kind, unit }: ShownColumn): HTMLElement {
  const words = capitalise(name.replaceAll('_', ' '));
  const title = unit === undefined ? words : `${words}, ${formatUnit(unit)}`;
  return h('th', { scope: 'col', class: isNumber(kind) && 'number' }, title);
}

function createBodyRow(
  columns: readonly ShownColumn[],
  texts: readonly string[],
  row: Row | undefined,
): HTMLElement {
  const cells = columns.map((column, i) => {
    const text = column.converted ? convert(column, row) : undefined;
    const content = text ?? texts[i] ?? '';
    return i === 0
      ? h('th', { scope: 'row' }, content)
      : h('td', { class: isNumber(column.kind) ? 'number' : isWordy(content) && 'wordy' }, content);
  });
  return h('tr', {}, ...cells);
}

function convert(
  { name, kind, unit, system }: ShownColumn,
  row: Row | undefined,
): string | undefined {
  const value = row?.cells.get(name);
  if (value === undefined || kind === undefined || unit === undefined) return undefined;
  return showValue(value, kind, { unit }, system).number;
}

/** A sentence, which a narrow page must not set in a word a line. */
function isWordy(text: string): boolean {
  return text.length > 40;
}

function isNumber(kind: Kind | undefined): boolean {
  return kind?.type === 'quantity';
}

function rowsOf(cell: Cell): readonly Row[] {
  return cell.role === 'table' ? cell.rows : [];
}

function capitalise(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
