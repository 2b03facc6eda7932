import { h } from './element.ts';

/** Where all jobs stand, and where one is opened. */
export const JOBS_HREF = '#/jobs';

/** What stays where, in one sentence; the same wherever it is said. */
export const STAYS_HERE =
  'All that you type stays on this device, in this browser: nothing is ever sent anywhere.';

export interface FirstScreen {
  newJob(): void;
  showTour(): void;
}

/** Above the demo, for those who see the page for the first time; gone with the first change. */
export function createFirstScreen({ newJob, showTour }: FirstScreen): HTMLElement {
  return h(
    'section',
    { class: 'welcome', 'aria-label': 'To begin with' },
    h(
      'p',
      {},
      'This is a worked example, a demo with an invented car. ',
      h('b', {}, 'Change any figure in a coloured field'),
      ' and all that hangs on it is worked again, on every sheet.',
    ),
    h(
      'div',
      { class: 'buttons' },
      h('button', { type: 'button', on: { click: newJob } }, 'New job'),
      h('a', { class: 'button', href: `${JOBS_HREF}/open` }, 'Open a job'),
      h('a', { class: 'button', href: JOBS_HREF }, 'Your jobs'),
      h('button', { type: 'button', on: { click: showTour } }, 'Show me round'),
    ),
    h('p', { class: 'stays' }, STAYS_HERE),
  );
}
