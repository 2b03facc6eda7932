import type { GivenCell } from '../sheet/cell.ts';
import { createChoice } from './choice.ts';
import type { Desk } from './desk.ts';

export interface GivenChoice {
  readonly element: HTMLElement;
  /** Mutates the choice; true while the value is one's own, typed. */
  refresh(): boolean;
  /** What the picked row holds. */
  describe(): readonly string[];
}

/** The pick of a given that comes from a table; undefined for one that does not. */
export function createGivenChoice(
  desk: Desk,
  cell: GivenCell,
  describedBy: readonly string[],
): GivenChoice | undefined {
  const { statement, table } = cell;
  const rows = table === undefined ? undefined : desk.book.cells[table];
  if (statement.value.type !== 'pick' || rows?.role !== 'table') return undefined;
  const keys = rows.rows.map((row) => row.key);
  const isColumn = statement.value.column !== undefined;
  const choice = createChoice({
    id: cell.name,
    describedBy,
    rows: keys,
    ...(isColumn ? { own: 'my own, typed below' } : {}),
    pick: (row) => desk.enter(cell, { text: row }),
    pickOwn: () => desk.enter(cell, { text: typedRow(desk, cell) }),
  });

  function pickedRow(): string | undefined {
    const reading = desk.readingOf(cell);
    return reading.state === 'value' ? reading.row : undefined;
  }

  return {
    element: choice.element,
    refresh() {
      const row = pickedRow();
      choice.show(row);
      return row === undefined && isColumn;
    },
    describe: () => [],
  };
}

/** The row that was picked, as text to change: nobody types five ratios to try a sixth. */
function typedRow(desk: Desk, cell: GivenCell): string {
  const reading = desk.readingOf(cell);
  if (reading.state !== 'value') return '';
  const factor = cell.display.unit?.factor ?? 1;
  const { value } = reading;
  const round = (one: number): number => Number((one / factor).toPrecision(12));
  if (value instanceof Float64Array) return `[${[...value].map(round).join(', ')}]`;
  return typeof value === 'number' ? String(round(value)) : '';
}
