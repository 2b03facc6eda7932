import { fill, h } from './element.ts';

interface Stop {
  readonly title: string;
  readonly words: string;
  /** The first of these that is on the page is brought into view and framed. */
  readonly at: string;
}

const STOPS: readonly Stop[] = [
  {
    title: 'The job, sheet by sheet',
    words:
      'Each sheet is one stage of the work, in the order in which it is done. The mark tells how it stands: not started, in work, all checks pass, or a check fails.',
    at: '.route',
  },
  {
    title: 'What you measure',
    words:
      'Type a reading the way you say it: 3 1/8, 80.6 mm, 25 thou. Below the field stands what was understood.',
    at: 'main .given-row',
  },
  {
    title: 'What it comes to',
    words: 'Each result stands with its formula and with your figures in it. Nothing is hidden.',
    at: 'main .work',
  },
  {
    title: 'Nothing is lost',
    words:
      'Every change is saved by itself and can be undone, by its name. Under Jobs you begin another, open a file, or take yours with you.',
    at: '.head',
  },
];

/** A short tour of the page, which can be left at any time. It frames things and covers none of them. */
export function createTour(leave: () => void): HTMLElement {
  const element = h('section', { class: 'tour', 'aria-label': 'Round the page', tabindex: -1 });
  let framed: Element | null = null;

  function frame(at: string | undefined): void {
    framed?.classList.remove('framed');
    framed = at === undefined ? null : document.querySelector(at);
    framed?.classList.add('framed');
    framed?.scrollIntoView({ block: 'center' });
  }

  function end(): void {
    frame(undefined);
    element.remove();
    leave();
  }

  function show(place: number): void {
    const stop = STOPS[place];
    if (stop === undefined) {
      end();
      return;
    }
    frame(stop.at);
    const isLast = place === STOPS.length - 1;
    const next = h(
      'button',
      { type: 'button', on: { click: () => show(place + 1) } },
      isLast ? 'Done' : 'Next',
    );
    fill(
      element,
      h('h2', {}, stop.title),
      h('p', {}, stop.words),
      h('p', { class: 'tour-place' }, `${place + 1} of ${STOPS.length}`),
      next,
      isLast ? undefined : h('button', { type: 'button', on: { click: end } }, 'Leave the tour'),
    );
    element.setAttribute('aria-label', `Round the page: ${stop.title}`);
  }

  element.addEventListener('keydown', ({ key }) => {
    if (key === 'Escape') end();
  });
  show(0);
  return element;
}
