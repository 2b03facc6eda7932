import type { Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { createLazy } from './lazy.ts';
import type { RenderSheet } from './paper-section.ts';
import type { View } from './view.ts';

/**
 * At the foot of a sheet: what of it, and of the whole job, goes on paper. Its script is loaded when it
 * is opened.
 *
 * @param render how a sheet is shown; handed in, because the view of a sheet holds this one
 */
export function createPaper(desk: Desk, sheet: Sheet, render: RenderSheet): View | undefined {
  if (sheet.parts.length === 0) return undefined;
  const { element, refresh } = createLazy(
    'On paper: sheets to print, and to measure on',
    async () => {
      const { createPaperChoices } = await import('./paper-choices.ts');
      return createPaperChoices(desk, sheet, { render, print: () => window.print() });
    },
  );
  element.classList.add('publish', 'to-paper');
  return { element, cells: [], refresh };
}
