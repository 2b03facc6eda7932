import { mapRows } from '../chart/map-table.ts';
import type { MapData } from '../sheet/map-data.ts';
import { h } from './element.ts';

/** The numbers of a map: one value across, the other down. */
export function createMapTable(data: MapData): HTMLElement {
  const { title, header, rows } = mapRows(data);
  const heads = header.map((head) => h('th', { scope: 'col', class: 'number' }, head));
  const body = rows.map(([y, ...values]) =>
    h(
      'tr',
      {},
      h('th', { scope: 'row', class: 'number' }, y),
      ...values.map((value) => h('td', { class: 'number' }, value)),
    ),
  );
  return h(
    'table',
    {},
    h('caption', {}, title),
    h('thead', {}, h('tr', {}, ...heads)),
    h('tbody', {}, ...body),
  );
}
