import { fill, h } from './element.ts';
import type { View } from './view.ts';

const NOT_LOADED = 'This could not be loaded. Load the page again.';

/** Something to be opened whose script is loaded only then, and which works nothing while it is shut. */
export function createLazy(
  title: string,
  load: () => Promise<View>,
): { readonly element: HTMLDetailsElement; refresh(): void } {
  const place = h('div');
  const element = h('details', { on: { toggle: open } }, h('summary', {}, title), place);
  let view: View | undefined;
  let isAsked = false;

  function open(): void {
    if (!element.open) return;
    if (!isAsked) show();
    isAsked = true;
    view?.refresh();
  }

  async function show(): Promise<void> {
    try {
      view = await load();
      fill(place, view.element);
    } catch {
      fill(place, h('p', { class: 'failed' }, NOT_LOADED));
    }
  }

  return {
    element,
    refresh() {
      if (element.open) view?.refresh();
    },
  };
}
