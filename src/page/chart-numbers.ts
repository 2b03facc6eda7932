import { chartRows } from '../chart/chart-table.ts';
import type { ChartData } from '../sheet/chart-data.ts';
import { h } from './element.ts';

/** The numbers of a chart; the row of the present value is marked, in words as well. */
export function createChartTable(data: ChartData): HTMLElement {
  const { header, rows } = chartRows(data);
  const heads = header.map((head) => h('th', { scope: 'col', class: 'number' }, head));
  const body = rows.map(({ cells: [x, ...ys], present }) =>
    h(
      'tr',
      { class: present && 'present' },
      h('th', { scope: 'row', class: 'number' }, present && 'now: ', x),
      ...ys.map((y) => h('td', { class: 'number' }, y)),
    ),
  );
  return h('table', {}, h('thead', {}, h('tr', {}, ...heads)), h('tbody', {}, ...body));
}
