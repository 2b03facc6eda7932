import type { Sheet } from '../sheet/sheet.ts';
import { h } from './element.ts';
import { createIcon } from './icon.ts';
import { sheetHref } from './link.ts';

/** At the foot of a sheet: the way to the one before and the one after. */
export function createOnward(sheets: readonly Sheet[], here: Sheet): HTMLElement {
  const place = sheets.indexOf(here);
  const before = sheets[place - 1];
  const after = sheets[place + 1];
  return h(
    'nav',
    { class: 'onward', 'aria-label': 'Next and previous sheet' },
    before && h('a', { href: sheetHref(before.name) }, createIcon('before'), before.title),
    after &&
      h('a', { class: 'next', href: sheetHref(after.name) }, after.title, createIcon('after')),
  );
}
