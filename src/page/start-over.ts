import { type Job, NEW_JOB, withEntry } from '../job/record.ts';
import type { Book } from '../sheet/book.ts';
import { h } from './element.ts';

/**
 * The job with every figure that the person measures left blank. Figures that come from a source and
 * picks from a table stay, and so do the units of the page.
 */
export function createBlankJob(book: Book, job: Job): Job {
  const start: Job = { ...NEW_JOB, title: 'New job', system: job.system };
  return book.cells.reduce((blank, cell) => {
    if (cell.role !== 'given' || cell.source !== undefined) return blank;
    const { type } = cell.statement.value;
    if (type !== 'entry' && type !== 'text') return blank;
    return withEntry(blank, cell.sheet, cell.name, { text: '' });
  }, start);
}

/** The job with nothing typed: the sheets show their worked examples again. */
export function createExampleJob(job: Job): Job {
  return { ...NEW_JOB, system: job.system };
}

export interface StartOver {
  startBlank(): void;
  startFromExample(): void;
}

/** Two ways to begin again. Nothing is asked first, since undo brings everything back. */
export function createStartOver({ startBlank, startFromExample }: StartOver): HTMLElement {
  return h(
    'section',
    { class: 'afresh', 'aria-label': 'Start over' },
    h('p', {}, 'Begin again on all sheets. Undo brings everything back.'),
    h('button', { type: 'button', on: { click: startBlank } }, 'Start blank'),
    ' ',
    h('button', { type: 'button', on: { click: startFromExample } }, 'Worked example'),
  );
}
