import type { Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { createLazy } from './lazy.ts';
import type { View } from './view.ts';

/** At the foot of a sheet with questions: a practice sheet to print, and what the job remembers of answers. */
export function createPracticeFoot(desk: Desk, sheet: Sheet): View | undefined {
  const asks = desk.book.practices.some((each) => each.sheet === sheet.name && each.linked);
  if (!asks) return undefined;
  const lazy = createLazy('Practice sheet to print, and the instructor’s record', async () => {
    const { createPracticePaper } = await import('./practice-paper.ts');
    return createPracticePaper(desk, sheet);
  });
  lazy.element.className = 'practice-foot';
  return { element: lazy.element, cells: [], refresh: lazy.refresh };
}
