import { tableCSV } from '../chart/csv.ts';
import { nameFile } from '../export/figures.ts';
import { tableHTML, tableMarkdown } from '../export/table-text.ts';
import type { FigureTable } from '../sheet/figure-table.ts';
import { createButton } from './button.ts';
import { downloadText } from './download.ts';
import { h } from './element.ts';
import type { PublishHost } from './publish-host.ts';

/** One table: to the clipboard as text that other programs set, or as a file. */
export function createPublishTable(host: PublishHost, table: FigureTable): HTMLElement {
  const name = nameFile(host.sheet, 'table', table.title);
  const copy = (kind: string, text: string) => async () => {
    try {
      await navigator.clipboard.writeText(text);
      host.say(`${table.title} is on the clipboard as ${kind}.`);
    } catch {
      host.say('The clipboard is not open to this page. Save the file instead.');
    }
  };
  const markdown = tableMarkdown(table);
  const html = tableHTML(table);
  return h(
    'li',
    {},
    h('b', {}, table.title),
    h(
      'div',
      { class: 'buttons', role: 'group', 'aria-label': table.title },
      createButton('Copy as Markdown', copy('Markdown', markdown)),
      createButton('Copy as HTML', copy('HTML', html)),
      createButton('HTML', () => downloadText(html, `${name}.html`, 'text/html')),
      createButton('CSV', () => downloadText(tableCSV(table), `${name}.csv`, 'text/csv')),
    ),
  );
}
