import { h } from './element.ts';
import type { JobsHost } from './jobs-host.ts';
import type { LiveDesk } from './live-desk.ts';
import { takeInFile, takeInText } from './take-in.ts';
import type { View } from './view.ts';

/** Opens a job from a file, by picking, dropping or pasting. It is always one more job. */
export function createOpening(desk: LiveDesk, host: JobsHost): View {
  const picker = h('input', {
    id: 'open',
    type: 'file',
    accept: '.json,application/json,.md,text/markdown',
    on: { change: pick },
  });
  const paste = h('textarea', { id: 'pasted', rows: 3, spellcheck: 'false' });
  const open = h('button', { type: 'button', on: { click: takePasted } }, 'Open what is pasted');

  function pick(): void {
    const file = picker.files?.[0];
    if (file !== undefined) void takeInFile(host, desk, file);
    // So that the same file can be picked once more.
    picker.value = '';
  }

  function takePasted(): void {
    if (paste.value.trim() !== '') void takeInText(host, desk, paste.value);
  }

  const element = h(
    'section',
    { class: 'jobs-part drop', 'aria-labelledby': 'open-job' },
    h('h2', { id: 'open-job' }, 'Open a job'),
    h('p', {}, 'It is opened as a copy: what is in this browser stays as it is.'),
    h('p', {}, h('label', { for: 'open' }, 'A job file, or a sheet of your own'), picker),
    h('p', {}, 'A file may also be dropped anywhere, on any page.'),
    h('p', {}, h('label', { for: 'pasted' }, 'The text of a job file, or a link'), paste),
    h('p', { class: 'buttons' }, open),
  );
  return { element, cells: [], refresh: () => {} };
}
