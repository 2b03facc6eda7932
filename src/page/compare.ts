import type { Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import type { View } from './view.ts';

const NOT_LOADED = 'The comparison could not be loaded. Load the page again.';

/**
 * At the foot of a sheet: proposals beside the job as it is. What compares is loaded when it is opened,
 * and works nothing while it is shut.
 */
export function createCompare(desk: Desk, sheet: Sheet): View | undefined {
  const cells = desk.book.cellsOf(sheet.name);
  // A sheet that works nothing out has nothing to compare.
  if (!cells.some(({ role }) => role === 'work' || role === 'stack')) return undefined;
  const count = h('span');
  const place = h('div');
  const element = h(
    'details',
    { class: 'compare', on: { toggle: open } },
    h('summary', {}, 'Side by side', count),
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
    try {
      const { createCompareView } = await import('./compare-view.ts');
      inner = createCompareView(desk, sheet);
      fill(place, inner.element);
    } catch {
      fill(place, h('p', { class: 'failed' }, NOT_LOADED));
    }
  }

  function refresh(): void {
    const { length } = desk.job().variants;
    count.textContent = length === 0 ? ': set a proposal beside the job' : `: ${sayCount(length)}`;
    if (element.open) inner?.refresh();
  }

  refresh();
  return {
    element,
    cells: cells.map(({ index }) => index),
    refresh,
    dispose: () => inner?.dispose?.(),
  };
}

function sayCount(length: number): string {
  return length === 1 ? 'one proposal beside the job' : `${length} proposals beside the job`;
}
