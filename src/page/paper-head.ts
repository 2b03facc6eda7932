import type { Job } from '../job/record.ts';
import { fill, h } from './element.ts';

export interface PaperHead {
  readonly element: HTMLElement;
  /** Mutates the line: which job it is. */
  show(job: Job): void;
}

/** The line at the head of a print: the job, and the day it was printed. */
export function createPaperHead(now: () => Date): PaperHead {
  const element = h('p', { class: 'print-only print-head' });
  return {
    element,
    show({ title }) {
      const day = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' }).format(now());
      fill(element, h('b', {}, `Layshaft · ${title}`), h('span', {}, day));
    },
  };
}
