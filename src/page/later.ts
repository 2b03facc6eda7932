import { fill, h } from './element.ts';
import type { View } from './view.ts';

const NOT_LOADED = 'This block could not be loaded. Load the page again.';

/** A view whose script comes after the first results: an empty place until it is there. */
export function createLater<Tool>(load: () => Promise<Tool>, create: (tool: Tool) => View): View {
  const element = h('div', { class: 'later' });
  let view: View | undefined;
  let disposed = false;

  load().then(
    (tool) => {
      if (disposed) return;
      view = create(tool);
      fill(element, view.element);
    },
    () => fill(element, h('p', { class: 'failed' }, NOT_LOADED)),
  );

  return {
    element,
    get cells() {
      return view?.cells ?? [];
    },
    refresh: () => view?.refresh(),
    dispose() {
      disposed = true;
      view?.dispose?.();
    },
  };
}
