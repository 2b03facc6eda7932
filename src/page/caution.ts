import type { CautionBlock } from '../sheet/sheet.ts';
import { h } from './element.ts';
import { createNarrative } from './narrative.ts';

/** A safety note: a rust frame, the word "Caution", always printed. */
export function createCaution(block: CautionBlock): HTMLElement {
  const title = h('strong', {}, block.title);
  // The sheet's title has been passed; a heading within a note stands below the sheet's own.
  const words = createNarrative(block.tokens, { level: 2, titled: true });
  return h(
    'div',
    { class: 'caution', role: 'note' },
    h('p', { class: 'caution-title' }, h('span', { class: 'caution-word' }, 'Caution'), ' ', title),
    ...words,
  );
}
