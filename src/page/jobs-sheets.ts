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

  function createLine([name, { version }]: readonly [string, { readonly version: string }]) {
    const letGo = (): void => void letGoOfSheet(host, desk, name);
    return h(
      'li',
      {},
      h('a', { class: 'job-name', href: sheetHref(name) }, h('bdi', {}, shorten(name, 60))),
      h('span', { class: 'saved' }, 'version ', h('code', {}, version)),
      h(
        'button',
        { type: 'button', on: { click: letGo } },
        'Let go',
        h('span', { class: 'unseen' }, ` of ${shorten(name, 60)}`),
      ),
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
    h('p', {}, h('label', { for: 'own-sheet' }, 'Add a sheet (.md)'), picker),
  );
  return { element, cells: [], refresh };
}
