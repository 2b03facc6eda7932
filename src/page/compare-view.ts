import { type Column, workColumns } from '../job/work-columns.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { createCompareCharts, joinFigures } from './compare-charts.ts';
import { createCompareMaps } from './compare-maps.ts';
import { createProposals } from './compare-proposals.ts';
import { createCompareTable } from './compare-table.ts';
import type { Desk } from './desk.ts';
import { h } from './element.ts';
import type { ShownColumn } from './shown-column.ts';
import type { View } from './view.ts';

/** The name of the job itself among its proposals. */
const AS_IT_IS = 'As it is';

/** Proposals, their results in columns, and their charts laid over one another, their maps beside. */
export function createCompareView(desk: Desk, sheet: Sheet): View {
  const proposals = createProposals(desk, sheet);
  const table = createCompareTable(desk, sheet);
  const figures = joinFigures([createCompareCharts(desk, sheet), createCompareMaps(desk, sheet)]);
  const compared = h('div', {}, table.element, figures.element);
  const element = h(
    'div',
    { class: 'compared' },
    h(
      'p',
      { class: 'meaning' },
      'A proposal is the job with something different. It is worked on every sheet, and changes nothing in the job until you make it the job’s.',
    ),
    proposals.element,
    compared,
  );

  function refresh(): void {
    const columns = workColumns(desk.book, desk.job()).map(nameColumn);
    proposals.show(columns);
    compared.hidden = columns.length < 2;
    if (columns.length < 2) return;
    table.show(columns);
    figures.show(columns);
  }

  refresh();
  return { element, cells: [], refresh, dispose: figures.dispose };
}

function nameColumn(column: Column): ShownColumn {
  return { ...column, name: column.variant ?? AS_IT_IS };
}
