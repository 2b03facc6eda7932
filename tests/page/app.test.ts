import { afterEach, expect, test, vi } from 'vitest';
import { createHistory, type History } from '../../src/job/history.ts';
import type { Saved } from '../../src/job/keeper.ts';
import { type Job, NEW_JOB, withEntry } from '../../src/job/record.ts';
import { createShelf } from '../../src/job/shelf.ts';
import { type App, createApp, type PageView } from '../../src/page/app.ts';
import { h } from '../../src/page/element.ts';
import { linkBook } from '../../src/sheet/book.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { textOf } from './test-desk.ts';

const BOLTS =
  '# Bolts\n\n```given\nwidth = 3 in "Width"\n```\n\n```work\ntwice = 2 * width as in\n```\n';
const NUTS =
  '# Nuts\n\n```from 10-bolts\nwidth\n```\n\n```check\nwidth at most 4 in "Width"\n```\n';

let app: App | undefined;
afterEach(() => app?.dispose());

interface Options {
  readonly job?: Job;
  readonly standing?: readonly string[];
  readonly save?: (history: History) => Promise<Saved>;
}

const NOON = new Date('2026-03-14T12:00:00Z');

function open({ job, standing = [], save }: Options = {}, hash = '#/10-bolts') {
  const saved: Job[] = [];
  const root = h('div');
  document.body.replaceChildren(root);
  app = createApp({
    root,
    book: linkBook([readSheet(BOLTS, '10-bolts.md'), readSheet(NUTS, '20-nuts.md')]),
    home: '10-bolts',
    history: createHistory(job ?? NEW_JOB),
    isDemo: job === undefined,
    standing,
    theme: { root: h('html'), shelf: createShelf(() => localStorage), prefersDark: () => false },
    async save(history) {
      if (save !== undefined) return save(history);
      saved.push(history.job);
      return { state: 'saved', at: NOON };
    },
    newJob: () => {},
    relink: () => {},
    openPage: (name) => (name === 'jobs' ? makePage() : undefined),
    now: () => NOON,
  });
  app.open(hash);
  const field = () => root.querySelector<HTMLInputElement>('#width')!;
  const type = (text: string) => {
    field().value = text;
    field().dispatchEvent(new FocusEvent('blur'));
  };
  return { app, root, saved, field, type };
}

async function makePage(): Promise<PageView> {
  const nodes = { title: h('h1', {}, 'Jobs'), nodes: [h('p', {}, 'All of them')] };
  const view = { refresh: () => {}, refreshAll: () => {}, dispose: () => {} };
  return { name: 'jobs', heading: 'Jobs', ...nodes, ...view };
}

test('the page has a header, a route, one open sheet and a status', () => {
  const { root } = open();
  expect(root.querySelectorAll('header, nav.route, main, [role=status]')).toHaveLength(4);
  expect(textOf(root.querySelector('h1'))).toBe('10 Bolts');
});

test('an address that names no sheet opens the first', () => {
  const { root } = open({}, '#/99-none');
  expect(textOf(root.querySelector('h1'))).toBe('10 Bolts');
});

test('what is entered is worked, saved and carried on', async () => {
  const { app: opened, root, saved, type } = open();
  type('5');
  await opened.desk.settled();
  await vi.waitFor(() => expect(textOf(root.querySelector('#twice strong'))).toBe('10 in'));
  await opened.save();
  expect(saved.at(-1)?.entries).toEqual({ '10-bolts': { width: { text: '5', unit: 'in' } } });
  expect(textOf(root.querySelector('.saved'))).toMatch(/^Saved in this browser \d\d:00$/);
  opened.open('#/20-nuts');
  expect(textOf(root.querySelector('#width strong'))).toBe('5 in');
  expect(textOf(root.querySelector('.stop.fails'))).toContain('Nuts a check fails');
});

test('what was stored stands in the fields', () => {
  const job = withEntry(NEW_JOB, '10-bolts', 'width', { text: '3 1/8', unit: 'in' });
  const { field, root } = open({ job });
  expect(field().value).toBe('3 1/8');
  expect(root.querySelector<HTMLElement>('.welcome')?.hidden).toBe(true);
});

test('the welcome goes with the first change', () => {
  const { root, type } = open();
  expect(root.querySelector<HTMLElement>('.welcome')?.hidden).toBe(false);
  type('4');
  expect(root.querySelector<HTMLElement>('.welcome')?.hidden).toBe(true);
});

test('what is to be said stands until the person has taken note of it', () => {
  const { app: opened, root } = open({ standing: ['A sheet is missing.'] });
  opened.announce('The job could not be read.');
  const alert = root.querySelector('[role=alert]')!;
  expect(textOf(alert)).toMatch(/^A sheet is missing\. The job could not be read\./);
  alert.querySelector('button')!.click();
  expect(textOf(alert)).toBe('');
});

test('a save that fails is loud and stays, with the way out beside it', async () => {
  const outcomes: Saved[] = [
    { state: 'failed', trouble: 'Not saved: no room.' },
    { state: 'saved', at: NOON },
  ];
  const { app: opened, root, type } = open({ save: async () => outcomes.shift()! });
  type('4');
  const alert = root.querySelector('[role=alert]')!;
  await vi.waitFor(() => expect(textOf(alert)).toMatch(/^Not saved: no room\./));
  expect(textOf(alert.querySelector('button'))).toBe('Download the job');
  expect(textOf(root.querySelector('.saved'))).toBe('Not saved');
  expect(opened.isBehind()).toBe(true);
  type('5');
  await vi.waitFor(() => expect(textOf(alert)).toBe(''));
});

test('overtaken by another window, the job goes on under another title, and that is said', async () => {
  const outcomes: Saved[] = [
    { state: 'copied', at: NOON, title: 'Mine (copy)' },
    { state: 'saved', at: NOON },
  ];
  const { app: opened, root, type } = open({ save: async () => outcomes.shift()! });
  type('4');
  await vi.waitFor(() => expect(opened.desk.job().title).toBe('Mine (copy)'));
  expect(textOf(root.querySelector('[role=alert]'))).toMatch(/Nothing was overwritten/);
  await vi.waitFor(() => expect(outcomes).toEqual([]));
});

test('a page that is no sheet opens under the same header', async () => {
  const { app: opened, root } = open();
  opened.open('#/jobs');
  await vi.waitFor(() => expect(textOf(root.querySelector('h1'))).toBe('Jobs'));
  opened.open('#/10-bolts');
  expect(textOf(root.querySelector('h1'))).toBe('10 Bolts');
});

test('a page that was asked for and left before it came is not shown', async () => {
  const { app: opened, root } = open();
  opened.open('#/jobs');
  opened.open('#/20-nuts');
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(textOf(root.querySelector('h1'))).toBe('20 Nuts');
});

test('what has no place on a sheet any more is told on it', () => {
  const job = withEntry(NEW_JOB, '10-bolts', 'height', { text: '7', unit: 'in' });
  const { root } = open({ job });
  expect(textOf(root.querySelector('.fit'))).toMatch(/One thing has no place.*entry height: 7 in/);
});

test('undo by key brings back the field', () => {
  const { field, type } = open();
  type('4');
  document.body.dispatchEvent(
    new KeyboardEvent('keydown', { key: 'z', ctrlKey: true, bubbles: true }),
  );
  expect(app?.desk.history().past).toHaveLength(0);
  return vi.waitFor(() => expect(field().value).toBe('3'));
});

test('what another window stored is taken in, and can be undone', async () => {
  const { app: opened, field } = open();
  opened.adopt(withEntry(NEW_JOB, '10-bolts', 'width', { text: '7', unit: 'in' }));
  await vi.waitFor(() => expect(field().value).toBe('7'));
  expect(opened.desk.history().past.map((step) => step.label)).toEqual([
    'change in another window',
  ]);
});

test('an address with a cell puts the focus on it', () => {
  const { app: opened, field } = open();
  opened.open('#/10-bolts/width');
  expect(document.activeElement).toBe(field());
});

test('a page without any sheet says so', () => {
  const root = h('div');
  app = createApp({
    root,
    book: linkBook([]),
    home: '',
    history: createHistory(NEW_JOB),
    isDemo: false,
    standing: [],
    theme: { root: h('html'), shelf: createShelf(() => localStorage), prefersDark: () => false },
    save: async () => ({ state: 'saved', at: NOON }),
    newJob: () => {},
    relink: () => {},
    openPage: () => undefined,
    now: () => NOON,
  });
  app.open('');
  expect(textOf(root.querySelector('h1'))).toBe('There is no sheet here');
});
