import { displayAsRead } from '../sheet/as-read.ts';
import type { Cell } from '../sheet/cell.ts';
import type { FromBlock, Sheet } from '../sheet/sheet.ts';
import { showValue } from '../sheet/show.ts';
import { titleOf } from './carried.ts';
import { type Desk, findCell } from './desk.ts';
import { fill, h } from './element.ts';
import { sheetHref } from './link.ts';
import { createRow } from './margin.ts';
import type { View } from './view.ts';
import { createTrouble } from './waits.ts';

/** Values that are carried in: each with the sheet on which it is entered or worked. */
export function createFrom(desk: Desk, sheet: Sheet, block: FromBlock): View {
  const lines = block.statements.flatMap((statement) => {
    const cell = findCell(desk, sheet.name, statement.name);
    return cell?.role === 'from' && cell.statement === statement ? [createLine(desk, cell)] : [];
  });
  return {
    element: h(
      'div',
      { class: 'given carried block', role: 'group', 'aria-label': 'Carried in' },
      ...lines.map((line) => line.element),
    ),
    cells: lines.flatMap((line) => line.cells),
    refresh: () => lines.forEach((line) => void line.refresh()),
  };
}

function createLine(desk: Desk, cell: Cell & { readonly role: 'from' }): View {
  const origin = cell.origin === undefined ? undefined : desk.book.cells[cell.origin];
  const where =
    origin && h('a', { href: sheetHref(origin.sheet, origin.name) }, titleOf(desk, origin.sheet));
  const value = h('div', { class: 'carried-value' });
  const line = h(
    'div',
    { class: 'given-row', id: cell.name, tabindex: -1 },
    h(
      'div',
      { class: 'given-name' },
      cell.label,
      where && h('span', { class: 'how' }, 'carried in from ', where),
    ),
    value,
  );

  function refresh(): void {
    const outcome = desk.outcomeOf(cell.index);
    if (outcome.state !== 'value' || cell.kind === undefined)
      fill(value, createTrouble(desk, cell));
    else {
      const display = displayAsRead(desk.book, cell, outcome.value);
      const { text } = showValue(outcome.value, cell.kind, display, desk.system());
      fill(value, h('strong', {}, text));
    }
  }

  refresh();
  return { element: createRow(line, []), cells: [cell.index], refresh };
}
