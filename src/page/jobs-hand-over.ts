import { formatLink } from '../job/link.ts';
import { addressOf, copyLink, createLinkField, describeTooLong } from './copy-link.ts';
import { downloadJob } from './download.ts';
import { fill, h } from './element.ts';
import type { LiveDesk } from './live-desk.ts';
import { createQRCode } from './qr-code.ts';
import type { View } from './view.ts';

/** The ways out of the browser: a file, a link, and a code for the tablet on the bench. */
export function createHandOver(desk: LiveDesk): View {
  const told = h('div', { class: 'link-told' });
  const said = h('p', { role: 'status' });
  const file = h(
    'button',
    { type: 'button', on: { click: () => downloadJob(desk.job()) } },
    'Download the job file',
  );
  const element = h(
    'section',
    { class: 'jobs-part', 'aria-labelledby': 'hand-over' },
    h('h2', { id: 'hand-over' }, 'Take it with you'),
    h('p', {}, 'The file holds all of the job, in plain text that any program can read.'),
    h('p', { class: 'buttons' }, file),
    told,
    said,
  );

  function refresh(): void {
    const link = addressOf(formatLink(desk.job()));
    const tooLong = describeTooLong(link, 'this job');
    if (tooLong === undefined) fill(told, ...createLink(link));
    else fill(told, h('p', {}, tooLong));
  }

  function createLink(link: string): readonly HTMLElement[] {
    const field = createLinkField('job-link', link);
    const copy = async (): Promise<void> => {
      said.textContent = await copyLink(field);
    };
    return [
      h(
        'p',
        {},
        h('label', { for: 'job-link' }, 'A link with the whole job in it. It opens as a copy.'),
        h('span', { class: 'entry' }, field),
      ),
      h(
        'p',
        { class: 'buttons' },
        h('button', { type: 'button', on: { click: copy } }, 'Copy the link'),
      ),
      h(
        'details',
        {},
        h('summary', {}, 'The same as a code for another device'),
        createQRCode(link, 'Code of the link to this job'),
      ),
      h(
        'div',
        { class: 'print-only' },
        createQRCode(link, 'Code of the link to this job'),
        h('p', {}, 'Opens this job as a copy on another device.'),
      ),
    ];
  }

  refresh();
  return { element, cells: [], refresh };
}
