import { MOST_STATES } from '../job/stored-history.ts';
import { fill, h } from './element.ts';
import { shorten } from './fit-note.ts';
import type { LiveDesk } from './live-desk.ts';
import type { View } from './view.ts';

/** The last states of the job by what was done, each to go back to. */
export function createStates(desk: LiveDesk): View {
  const list = h('ol', { class: 'states' });
  const element = h(
    'details',
    { class: 'jobs-part' },
    h('summary', {}, 'Go back to an earlier state'),
    h('p', {}, `The last ${MOST_STATES} are kept with the job. Redo leads forward again.`),
    list,
  );

  function refresh(): void {
    const steps = desk.history().past.slice(-MOST_STATES).toReversed();
    fill(list, ...steps.map(({ label }, i) => createState(label, i + 1)));
    if (steps.length === 0) fill(list, h('li', {}, 'Nothing has been changed yet.'));
  }

  function createState(label: string, steps: number): HTMLElement {
    const back = (): void => {
      for (let i = 0; i < steps; i += 1) desk.undo();
    };
    const name = h('bdi', {}, shorten(label));
    return h('li', {}, h('button', { type: 'button', on: { click: back } }, 'Before: ', name));
  }

  refresh();
  return { element, cells: [], refresh };
}
