import { fill, h } from './element.ts';

/** A place for a drawing that is laid out anew whenever its width or its numbers change. */
export interface Drawn {
  readonly element: HTMLElement;
  /** Asks for a new drawing; it comes with the next frame, at most one a frame. */
  redraw(): void;
  dispose(): void;
}

/** What a chart or a map needs at the least to keep its words apart, in px. */
export const LEAST_WIDTH = 300;
/** In px. Narrower than a page can be: one that is still being laid out, or is just being hidden. */
const NARROWEST = 60;
const NOT_LOADED = 'The drawing could not be loaded. Load the page again.';

/**
 * Draws for the width that there is: a drawing shrunk to a narrow page could not be read.
 *
 * @param load brings what draws, once; results on the page do not wait for it
 */
export function createDrawn<Tool>(
  className: string,
  load: () => Promise<Tool>,
  draw: (tool: Tool, width: number) => Element | undefined,
): Drawn {
  const element = h('div', { class: className });
  let tool: Tool | undefined;
  let frame: number | undefined;
  let width = 0;

  function redraw(): void {
    frame ??= requestAnimationFrame(() => {
      frame = undefined;
      if (width >= NARROWEST && tool !== undefined) fill(element, draw(tool, width) ?? '');
    });
  }

  const observer = new ResizeObserver(() => {
    const next = Math.floor(element.clientWidth);
    if (next === width) return;
    width = next;
    redraw();
  });
  observer.observe(element);

  load().then(
    (loaded) => {
      tool = loaded;
      redraw();
    },
    () => fill(element, h('p', { class: 'failed' }, NOT_LOADED)),
  );

  return {
    element,
    redraw,
    dispose() {
      observer.disconnect();
      if (frame !== undefined) cancelAnimationFrame(frame);
    },
  };
}
