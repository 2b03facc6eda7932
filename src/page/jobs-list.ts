import type { JobCard } from '../job/store.ts';
import { downloadText } from './download.ts';
import { fill, h } from './element.ts';
import { shorten } from './fit-note.ts';
import type { JobsHost } from './jobs-host.ts';
import type { View } from './view.ts';

/** All jobs in this browser, to open and to take out; and what could not be read, to download. */
export function createJobsList(host: JobsHost): View {
  const list = h('ul', { class: 'job-list' });
  const taken = h('div', { role: 'status' });
  const aside = h('div', {});
  const begin = (act: () => void, words: string): HTMLElement =>
    h('button', { type: 'button', on: { click: act } }, words);
  const element = h(
    'section',
    { class: 'jobs-part', 'aria-labelledby': 'your-jobs' },
    h('h2', { id: 'your-jobs' }, 'Your jobs'),
    list,
    taken,
    aside,
    h(
      'p',
      { class: 'buttons' },
      begin(host.newJob, 'New job'),
      begin(() => void host.openDemo(), 'Open the demo'),
    ),
  );

  function refresh(): void {
    void fillList();
    void fillAside();
  }

  async function fillList(): Promise<void> {
    const cards = await host.store.list();
    if (cards.length === 0)
      fill(list, h('li', {}, 'None yet. A job is kept with its first change.'));
    else fill(list, ...cards.map(createCard));
  }

  function createCard(card: JobCard): HTMLElement {
    const isOpen = card.id === host.currentId();
    const name = nameCard(card);
    return h(
      'li',
      { 'aria-current': isOpen ? 'true' : undefined },
      h('span', { class: 'job-name' }, h('bdi', {}, shorten(name, 100))),
      h('span', { class: 'saved' }, isOpen ? 'open now' : `saved ${formatMoment(card.savedAt)}`),
      !isOpen && button('Open', name, () => void host.openJob(card.id)),
      !isOpen && button('Delete', name, () => void takeOut(card)),
    );
  }

  async function takeOut(card: JobCard): Promise<void> {
    const bringBack = await host.store.remove(card.id);
    await fillList();
    if (bringBack === undefined) return;
    const undo = async (): Promise<void> => {
      await bringBack();
      fill(taken);
      await fillList();
    };
    fill(
      taken,
      h('p', {}, 'Deleted: ', h('bdi', {}, shorten(nameCard(card), 100)), '.'),
      button('Bring it back', nameCard(card), () => void undo()),
    );
  }

  async function fillAside(): Promise<void> {
    const kept = await host.store.listAside();
    fill(
      aside,
      kept.length > 0 && h('p', {}, 'Could not be read, and is kept as it was found:'),
      ...kept.map(({ text, why }, i) =>
        h(
          'p',
          { class: 'buttons' },
          h('span', {}, shorten(why)),
          button('Download', `what could not be read, ${i + 1}`, () =>
            downloadText(text, `kept-aside-${i + 1}.txt`, 'text/plain'),
          ),
        ),
      ),
    );
  }

  refresh();
  return { element, cells: [], refresh };
}

function nameCard({ title, vehicle }: JobCard): string {
  const name = vehicle === '' ? title : `${vehicle}: ${title}`;
  return name.trim() === '' ? 'without a title' : name;
}

function button(verb: string, name: string, act: () => void): HTMLElement {
  const about = h('span', { class: 'unseen' }, ' ', shorten(name, 100));
  return h('button', { type: 'button', on: { click: act } }, verb, about);
}

function formatMoment(at: number): string {
  return new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' }).format(at);
}
