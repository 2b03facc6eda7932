import { formatLink } from '../job/link.ts';
import type { Job } from '../job/record.ts';
import { addressOf, describeTooLong } from './copy-link.ts';
import { h } from './element.ts';
import { createQRCode } from './qr-code.ts';

/** Of one module of a code, in mm: a telephone reads it at arm's length. */
const MODULE = 0.42;
const SMALLEST = 32;

/**
 * Mutates a print: the job as a code beside the head of its first sheet, to be opened at the bench; or,
 * at the foot of its last, why there is none and what to take along in its place.
 */
export function placePaperCode(job: Job, first: Element, last: Element): void {
  const link = addressOf(formatLink(job));
  const why = isServed(link) ? describeTooLong(link, 'this job') : FROM_DISK;
  if (why === undefined) first.prepend(createCode(link));
  else last.append(h('p', { class: 'paper-code print-only' }, why));
}

const FROM_DISK =
  'This page was opened from a disk, and no link leads to it: take the job file along with this print.';

function isServed(link: string): boolean {
  return /^https?:/.test(link);
}

function createCode(link: string): HTMLElement {
  const code = createQRCode(link, 'Code of the link to this job');
  const side = (code as SVGSVGElement).viewBox.baseVal.width;
  const width = `${Math.max(SMALLEST, side * MODULE)}mm`;
  code.setAttribute('width', width);
  code.setAttribute('height', width);
  return h(
    'div',
    { class: 'paper-code print-only' },
    code,
    h('p', {}, 'Opens this job on another device, as a copy, as it stood when it was printed.'),
  );
}
