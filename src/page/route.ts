import type { Sheet } from '../sheet/sheet.ts';
import { h, setAttribute } from './element.ts';
import { sheetHref } from './link.ts';
import { nameStop, type Stop } from './stop.ts';

export interface Route {
  readonly element: HTMLElement;
  /** Mutates the route: which sheet is open, and how each one stands. */
  show(here: string, stopOf: (sheet: Sheet) => Stop): void;
}

/** The sheets of the job in order, a stop each along a line, with how far each one is. */
export function createRoute(sheets: readonly Sheet[], ...after: readonly HTMLElement[]): Route {
  const stops = sheets.map(createStop);
  const list = h('ol', {}, ...stops.map((stop) => h('li', {}, stop.link)));
  const element = h('nav', { class: 'route', 'aria-label': 'The job' }, list, ...after);
  let shown: string | undefined;
  return {
    element,
    show(here, stopOf) {
      for (const stop of stops) stop.show(stop.sheet.name === here, stopOf(stop.sheet));
      if (shown !== here) centre(list, stops.find((stop) => stop.sheet.name === here)?.link);
      shown = here;
    },
  };
}

interface ShownStop {
  readonly sheet: Sheet;
  readonly link: HTMLElement;
  show(here: boolean, stop: Stop): void;
}

function createStop(sheet: Sheet): ShownStop {
  const state = h('span', { class: 'stop-state' });
  const link = h(
    'a',
    { class: 'stop', href: sheetHref(sheet.name) },
    h('span', { class: 'stop-number' }, formatNumber(sheet.number)),
    h('span', { class: 'stop-mark', 'aria-hidden': 'true' }),
    h('span', { class: 'stop-title' }, sheet.title, ' ', state),
  );
  return {
    sheet,
    link,
    show(here, stop) {
      link.className = `stop ${stop.state}`;
      state.textContent = nameStop(stop);
      setAttribute(link, 'aria-current', here ? 'page' : undefined);
    },
  };
}

/** `00` is the guide: it stands before the job, without a number. */
export function formatNumber(number: number | undefined): string {
  return number === undefined || number === 0 ? '' : String(number);
}

/** On a narrow page the route is a bar that scrolls: the open sheet is brought into it. */
function centre(bar: HTMLElement, stop: HTMLElement | undefined): void {
  if (stop === undefined) return;
  bar.scrollLeft = stop.offsetLeft - (bar.clientWidth - stop.offsetWidth) / 2;
}
