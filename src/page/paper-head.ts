import type { Job } from '../job/record.ts';
import { fill, h } from './element.ts';
import { quoteCss } from './paper-rules.ts';

export interface PaperHead {
  readonly element: HTMLElement;
  /** Mutates the line and the pages' heads: which job it is. */
  show(job: Job): void;
  /** Mutates the pages' heads: what is open. */
  name(sheet: string): void;
}

/**
 * What tells each page of a print where it belongs: the job and its car, the sheet, the day. It goes into
 * the margins of the pages, and where the browser writes nothing into margins, to the head of the first.
 */
export function createPaperHead(now: () => Date): PaperHead {
  const element = h('p', { class: 'print-only print-head' });
  element.hidden = 'CSSMarginRule' in window;
  return {
    element,
    show({ title, vehicle }) {
      const day = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' }).format(now());
      const job = ['Layshaft', title, vehicle].filter((words) => words !== '').join(' · ');
      fill(element, h('b', {}, job), h('span', {}, day));
      setMargin('job', job);
      setMargin('day', day);
    },
    name: (sheet) => setMargin('sheet', sheet),
  };
}

/** The style sheet for print puts these into the margins. */
function setMargin(name: string, words: string): void {
  document.documentElement.style.setProperty(`--paper-${name}`, quoteCss(words));
}
