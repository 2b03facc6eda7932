import type { GivenCell } from '../sheet/cell.ts';
import type { GivenBlock, GivenStatement, Sheet } from '../sheet/sheet.ts';
import { carriedNotes } from './carried.ts';
import { type Desk, findCell } from './desk.ts';
import { h } from './element.ts';
import { createGivenRow } from './given-row.ts';
import { createRow, sourceNote } from './margin.ts';
import type { View } from './view.ts';

/** What is measured or chosen: a field each, with how to measure it and what was understood. */
export function createGivens(desk: Desk, sheet: Sheet, block: GivenBlock): View {
  const rows = block.statements.flatMap((statement) => {
    const cell = cellOf(desk, sheet, statement);
    return cell === undefined ? [] : [createLine(desk, cell)];
  });
  return {
    element: h(
      'div',
      { class: 'given block', role: 'group', 'aria-label': 'Readings' },
      ...rows.map((row) => row.element),
    ),
    cells: rows.flatMap((row) => row.cells),
    refresh: () => rows.forEach((row) => void row.refresh()),
  };
}

/** Undefined where the name was taken already, or the given itself is at fault: the list of problems tells. */
function cellOf(desk: Desk, sheet: Sheet, statement: GivenStatement): GivenCell | undefined {
  const cell = findCell(desk, sheet.name, statement.name);
  if (cell?.role !== 'given' || cell.statement !== statement) return undefined;
  return cell.kind === undefined ? undefined : cell;
}

function createLine(desk: Desk, cell: GivenCell): View {
  const row = createGivenRow(desk, cell);
  const notes = [...sourceNote(cell.source), ...carriedNotes(desk, cell)];
  return { ...row, element: createRow(row.element, notes) };
}
