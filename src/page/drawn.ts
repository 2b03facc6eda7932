import { fill, h } from './element.ts';

/** A place for a drawing that is laid out anew whenever its width or its numbers change. */
export interface Drawn {
  readonly element: HTMLElement;
  /** Asks for a new drawing; it comes with the next frame, at most one a frame. */
  redraw(): void;
  dispose(): void;
}

/** Draws for the width that there is: a drawing shrunk to a narrow page could not be read. */
export function createDrawn(
  className: string,
  draw: (width: number) => Element | undefined,
): Drawn {
  const element = h('div', { class: className });
  let frame: number | undefined;
  let width = 0;

  function redraw(): void {
    frame ??= requestAnimationFrame(() => {
      frame = undefined;
      if (width > 0) fill(element, (draw(width) as HTMLElement | undefined) ?? '');
    });
  }

  const observer = new ResizeObserver(() => {
    const next = Math.floor(element.clientWidth);
    if (next === width) return;
    width = next;
    redraw();
  });
  observer.observe(element);

  return {
    element,
    redraw,
    dispose() {
      observer.disconnect();
      if (frame !== undefined) cancelAnimationFrame(frame);
    },
  };
}
