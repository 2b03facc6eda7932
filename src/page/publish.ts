import type { Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { createLazy } from './lazy.ts';
import type { View } from './view.ts';

const PRINTED: ReadonlySet<string> = new Set(['chart', 'stack', 'check', 'drawing', 'figures']);

/** At the foot of a sheet: its figures and tables for print, and the whole write-up. */
export function createPublish(desk: Desk, sheet: Sheet): View | undefined {
  if (!sheet.parts.some(({ kind }) => PRINTED.has(kind))) return undefined;
  const { element, refresh } = createLazy(
    'For print: figures, tables, and the whole write-up',
    async () => (await import('./publish-view.ts')).createPublishView(desk, sheet),
  );
  element.className = 'publish';
  return { element, cells: desk.book.cellsOf(sheet.name).map(({ index }) => index), refresh };
}
