import type { PageView } from './app.ts';
import { h } from './element.ts';
import { STAYS_HERE } from './first-screen.ts';
import { createHandOver } from './jobs-hand-over.ts';
import type { JobsHost } from './jobs-host.ts';
import { createJobsList } from './jobs-list.ts';
import { createOpening } from './jobs-opening.ts';
import { createOwnSheets } from './jobs-sheets.ts';
import { createStates } from './jobs-states.ts';
import { createThisJob } from './jobs-this.ts';
import type { LiveDesk } from './live-desk.ts';
import type { View } from './view.ts';

/** The page of jobs: the one that is open, the others, and the ways in and out. */
export function createJobsPage(desk: LiveDesk, host: JobsHost): PageView {
  const title = h('h1', { tabindex: -1 }, h('span', {}, 'Jobs'));
  const views: readonly View[] = [
    createThisJob(desk),
    createStates(desk),
    createHandOver(desk),
    createJobsList(host),
    createOpening(desk, host),
    createOwnSheets(desk, host),
  ];
  return {
    name: 'jobs',
    heading: 'Jobs',
    title,
    nodes: [h('p', { class: 'stays' }, STAYS_HERE), ...views.map(({ element }) => element)],
    refresh: () => {},
    refreshAll() {
      for (const view of views) view.refresh();
    },
    dispose() {
      for (const view of views) view.dispose?.();
    },
  };
}
