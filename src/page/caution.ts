import type { CautionBlock } from '../sheet/sheet.ts';
import { h } from './element.ts';
import { createInline } from './narrative.ts';

/** A safety note: a rust frame, the word "Caution", always printed. */
export function createCaution(block: CautionBlock): HTMLElement {
  const title = h('strong', {}, block.title);
  return h(
    'div',
    { class: 'caution', role: 'note' },
    h('p', { class: 'caution-title' }, h('span', { class: 'caution-word' }, 'Caution'), ' ', title),
    h('p', {}, ...createInline(block.tokens)),
  );
}
