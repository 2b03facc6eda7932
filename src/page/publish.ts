import type { Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import type { View } from './view.ts';

const NOT_LOADED = 'What prints could not be loaded. Load the page again.';
const PRINTED: ReadonlySet<string> = new Set(['chart', 'stack', 'check', 'drawing', 'figures']);

/**
 * At the foot of a sheet: its figures and tables for print. What prints is loaded when it is opened, and
 * draws nothing while it is shut.
 */
export function createPublish(desk: Desk, sheet: Sheet): View | undefined {
  if (!sheet.parts.some(({ kind }) => PRINTED.has(kind))) return undefined;
  const place = h('div');
  const element = h(
    'details',
    { class: 'publish', on: { toggle: open } },
    h('summary', {}, 'For print: figures, tables, and the whole write-up'),
    place,
  );
  let inner: View | undefined;
  let isAsked = false;

  function open(): void {
    if (!element.open) return;
    if (!isAsked) load();
    isAsked = true;
    inner?.refresh();
  }

  async function load(): Promise<void> {
    fill(place, h('p', { class: 'meaning' }, 'Loading …'));
    try {
      const { createPublishView } = await import('./publish-view.ts');
      inner = await createPublishView(desk, sheet);
      fill(place, inner.element);
    } catch {
      isAsked = false;
      fill(place, h('p', { class: 'failed' }, NOT_LOADED));
    }
  }

  return {
    element,
    cells: desk.book.cellsOf(sheet.name).map(({ index }) => index),
    refresh: () => {
      if (element.open) inner?.refresh();
    },
    dispose: () => inner?.dispose?.(),
  };
}
