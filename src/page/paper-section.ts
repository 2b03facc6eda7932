import type { Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { h } from './element.ts';
import { prefixIds } from './paper-ids.ts';

/** How a sheet is shown: its nodes, and what lets go of them. */
export type RenderSheet = (
  desk: Desk,
  sheet: Sheet,
) => { readonly nodes: readonly Node[]; dispose(): void };

/** In px. Narrower is a drawing in something that is shut, which is never drawn. */
const NARROWEST = 60;
/** Frames without anything new after which what is still missing is not waited for. */
const PATIENCE = 600;

export interface PaperSection {
  readonly element: HTMLElement;
  /** Fulfilled when all that it draws is drawn, with the number of drawings that did not come. */
  settled(): Promise<number>;
}

/** A sheet on paper: shown once, drawn at the width that the paper has, and then left alone. */
export function createPaperSection(
  desk: Desk,
  sheet: Sheet,
  render: RenderSheet,
  prefix: string,
): PaperSection {
  const { nodes, dispose } = render(desk, sheet);
  const element = h('section', { class: 'paper-sheet' }, ...nodes);
  return {
    element,
    async settled() {
      const missing = await waitForDrawings(element);
      dispose();
      prefixIds(element, prefix);
      return missing;
    },
  };
}

async function waitForDrawings(element: Element): Promise<number> {
  let missing = countMissing(element);
  for (let idle = 0; missing > 0 && idle < PATIENCE; idle += 1) {
    await nextFrame();
    const left = countMissing(element);
    if (left !== missing) idle = 0;
    missing = left;
  }
  return missing;
}

/** Places that wait for a script or for a drawing. */
function countMissing(element: Element): number {
  const places = [...element.querySelectorAll('.later, .plot, .drawn')];
  return places.filter((place) => !place.hasChildNodes() && isShown(place)).length;
}

/** What comes later has no box of its own, and always comes. */
function isShown(place: Element): boolean {
  if (place.classList.contains('later')) return true;
  return place.checkVisibility() && place.clientWidth >= NARROWEST;
}

function nextFrame(): Promise<unknown> {
  return new Promise((resolve) => requestAnimationFrame(resolve));
}
