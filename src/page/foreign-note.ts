import { type Job, own } from '../job/record.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { h } from './element.ts';

/** Says on a sheet from outside that it is one, and which; undefined on a sheet of the house. */
export function createForeignNote(job: Job, sheet: Sheet): HTMLElement | undefined {
  const foreign = own(job.foreign, sheet.name);
  if (foreign === undefined) return undefined;
  return h(
    'section',
    { class: 'foreign', 'aria-label': 'Sheet from outside' },
    h('b', {}, 'A sheet from outside.'),
    ' It did not come with Layshaft, and nobody here has checked its figures. It can work formulas and nothing else. Its version is ',
    h('code', {}, foreign.version),
    '; the job keeps it.',
  );
}
