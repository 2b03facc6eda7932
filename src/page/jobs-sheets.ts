import type { ForeignSheet } from '../job/record.ts';
import { formatSheetLink } from '../job/sheet-link.ts';
import { addressOf, copyLink, createLinkField, describeTooLong } from './copy-link.ts';
import { downloadText } from './download.ts';
import { fill, h } from './element.ts';
import { shorten } from './fit-note.ts';
import type { JobsHost } from './jobs-host.ts';
import { sheetHref } from './link.ts';
import type { LiveDesk } from './live-desk.ts';
import { letGoOfSheet, takeInFile } from './take-in.ts';
import type { View } from './view.ts';

/** Sheets from outside: those that the job has, and how to add one. */
export function createOwnSheets(desk: LiveDesk, host: JobsHost): View {
  const list = h('ul', { class: 'job-list' });
  const said = h('p', { role: 'status' });
  const picker = h('input', {
    id: 'own-sheet',
    type: 'file',
    accept: '.md,text/markdown',
    on: { change: pick },
  });

  function pick(): void {
    const file = picker.files?.[0];
    if (file !== undefined) void takeInFile(host, desk, file);
    picker.value = '';
  }

  function refresh(): void {
    fill(list, ...Object.entries(desk.job().foreign).map(createLine));
  }

  function createLine([name, { version, text }]: readonly [string, ForeignSheet]): HTMLElement {
    const short = shorten(name, 60);
    const link = addressOf(formatSheetLink({ name, text }));
    const tooLong = describeTooLong(link, 'this sheet');
    const more = h('p', { class: 'more' }, tooLong);
    const download = (): void => downloadText(text, `${name}.md`, 'text/markdown');
    const copy = async (): Promise<void> => {
      const field = createLinkField(`sheet-link-${name}`, link);
      const label = 'A link with the whole sheet in it. It opens in the job that is open there.';
      fill(more, h('label', { for: field.id }, label), h('span', { class: 'entry' }, field));
      said.textContent = await copyLink(field);
    };
    return h(
      'li',
      {},
      h('a', { class: 'job-name', href: sheetHref(name) }, h('bdi', {}, short)),
      h('span', { class: 'saved' }, 'version ', h('code', {}, version)),
      tooLong === undefined
        ? createTool('Copy link to this sheet', ` ${short}`, copy)
        : createTool('Download the sheet', ` ${short}`, download),
      createTool('Let go', ` of ${short}`, () => void letGoOfSheet(host, desk, name)),
      more,
    );
  }

  refresh();
  const element = h(
    'section',
    { class: 'jobs-part', 'aria-labelledby': 'own-sheets' },
    h('h2', { id: 'own-sheets' }, 'Sheets from outside'),
    h(
      'p',
      {},
      'A sheet that you wrote, or were given, works beside the others and goes with the job. It can work formulas; it cannot run anything, ask for anything, or change another sheet.',
    ),
    list,
    said,
    h('p', {}, h('label', { for: 'own-sheet' }, 'Add a sheet (.md)'), picker),
  );
  return { element, cells: [], refresh };
}

function createTool(label: string, unseen: string, act: () => void): HTMLElement {
  return h(
    'button',
    { type: 'button', on: { click: act } },
    label,
    h('span', { class: 'unseen' }, unseen),
  );
}
