import { type Figure, listFigures, listTables } from '../export/figures.ts';
import type { Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import { loadExport } from './load-export.ts';
import { createPrintChoices } from './print-choices.ts';
import { createPublishBundle } from './publish-bundle.ts';
import { createPublishFigure } from './publish-figure.ts';
import type { PublishHost } from './publish-host.ts';
import { createPublishTable } from './publish-table.ts';
import type { View } from './view.ts';

/** Figures, tables and the bundle of a sheet, with one set of choices for all of them. */
export async function createPublishView(desk: Desk, sheet: Sheet): Promise<View> {
  const tools = await loadExport();
  const choices = createPrintChoices(refresh);
  const status = h('p', { class: 'meaning', role: 'status' });
  const host: PublishHost = {
    desk,
    sheet,
    tools,
    choices: choices.read,
    standing: () => ({ ...desk, isEntered: (cell) => desk.entryOf(cell) !== undefined }),
    say: (sentence) => fill(status, sentence),
  };
  const figures = h('ul', { class: 'publish-list' });
  const tables = h('ul', { class: 'publish-list' });
  const bundle = createPublishBundle(host);
  const figureHead = h('h3', {}, 'Figures');
  const tableHead = h('h3', {}, 'Tables');
  let shown: readonly Figure[] = [];

  function refresh(): void {
    const standing = host.standing();
    const list = listFigures(standing, sheet);
    const sets = listTables(standing, sheet);
    // Fields that a person is typing into stay; the rest is small enough to be made anew.
    const isBusy = figures.contains(document.activeElement) && sameIds(list, shown);
    if (!isBusy) fill(figures, ...list.map((figure) => createPublishFigure(host, figure)));
    fill(tables, ...sets.map((table) => createPublishTable(host, table)));
    figureHead.hidden = list.length === 0;
    tableHead.hidden = sets.length === 0;
    shown = list;
  }

  refresh();
  const element = h(
    'div',
    { class: 'published' },
    h(
      'p',
      { class: 'meaning' },
      'Each figure is drawn anew for its width on paper: lettering of 7 points or more, lines of half a point or more, nothing that needs a font or a network.',
    ),
    choices.element,
    figureHead,
    figures,
    tableHead,
    tables,
    bundle,
    status,
  );
  return { element, cells: [], refresh };
}

function sameIds(a: readonly Figure[], b: readonly Figure[]): boolean {
  return a.length === b.length && a.every(({ id }, i) => id === b[i]!.id);
}
