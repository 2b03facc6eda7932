import { formatLink, LONGEST_LINK } from '../job/link.ts';
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
    const link = `${location.href.replace(/#.*$/, '')}${formatLink(desk.job())}`;
    if (link.length > LONGEST_LINK) fill(told, h('p', {}, describeTooLong(link.length)));
    else fill(told, ...createLink(link));
  }

  function createLink(link: string): readonly HTMLElement[] {
    const field = h('input', { id: 'job-link', type: 'text', readonly: true, value: link });
    const copy = async (): Promise<void> => {
      field.select();
      said.textContent = await copyText(link);
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

function describeTooLong(length: number): string {
  return `As a link this job would have ${length.toLocaleString('en-GB')} characters. Links of more than ${LONGEST_LINK.toLocaleString('en-GB')} are cut on the way: hand over the file.`;
}

async function copyText(text: string): Promise<string> {
  try {
    await navigator.clipboard.writeText(text);
    return 'The link is copied.';
  } catch {
    return 'This browser does not let the page copy: the link is marked, copy it by key.';
  }
}
