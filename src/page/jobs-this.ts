import { listMisfits } from '../job/fit.ts';
import type { Job } from '../job/record.ts';
import { fill, h } from './element.ts';
import { createFitNote } from './fit-note.ts';
import { sheetHref } from './link.ts';
import type { LiveDesk } from './live-desk.ts';
import type { View } from './view.ts';

type Name = 'title' | 'vehicle' | 'worker';

const FIELDS: readonly (readonly [Name, string, string])[] = [
  ['title', 'Title', 'title'],
  ['vehicle', 'Vehicle', 'vehicle'],
  ['worker', 'Steps signed by', 'signature'],
];

/** The open job: how it is called, which car it is, who signs, and what in it no longer fits. */
export function createThisJob(desk: LiveDesk): View {
  const inputs = FIELDS.map(([name, label, word]) => createInput(desk, name, label, word));
  const misfits = h('div', {});

  function refresh(): void {
    for (const input of inputs) input.refresh();
    fill(
      misfits,
      ...listMisfits(desk.job(), desk.book).flatMap(({ sheet, ...rest }) => {
        const note = createFitNote({ sheet, ...rest });
        if (note === undefined) return [];
        return [h('h3', {}, h('a', { href: sheetHref(sheet) }, h('bdi', {}, sheet))), note];
      }),
    );
  }

  refresh();
  const element = h(
    'section',
    { class: 'jobs-part', 'aria-labelledby': 'this-job' },
    h('h2', { id: 'this-job' }, 'This job'),
    h('div', { class: 'job-fields' }, ...inputs.map((input) => input.element)),
    misfits,
  );
  return { element, cells: [], refresh };
}

function createInput(desk: LiveDesk, name: Name, label: string, word: string) {
  const id = `job-${name}`;
  const input = h('input', { id, type: 'text', autocomplete: 'off', on: { change } });

  function change(): void {
    const job: Job = { ...desk.job(), [name]: input.value.trim() };
    if (job[name] !== desk.job()[name]) desk.replace(`${word} of the job`, job);
  }

  return {
    element: h('p', {}, h('label', { for: id }, label), h('span', { class: 'entry' }, input)),
    refresh() {
      if (document.activeElement !== input) input.value = desk.job()[name];
    },
  };
}
