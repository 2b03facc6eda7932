import { afterEach, expect, test, vi } from 'vitest';
import { formatJob } from '../../src/job/read-job.ts';
import { NEW_JOB, withEntry } from '../../src/job/record.ts';
import { createStore, KEY } from '../../src/job/store.ts';
import { type App, createApp } from '../../src/page/app.ts';
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
  readonly stored?: string;
  readonly missing?: readonly string[];
}

function open({ stored, missing = [] }: Options = {}, hash = '#/10-bolts') {
  const shelf = new Map<string, string>(stored === undefined ? [] : [[KEY, stored]]);
  const storage = {
    getItem: (key: string) => shelf.get(key) ?? null,
    setItem: (key: string, value: string) => void shelf.set(key, value),
    removeItem: (key: string) => void shelf.delete(key),
  };
  const now = () => new Date('2026-03-14T12:00:00Z');
  const root = h('div');
  document.body.replaceChildren(root);
  app = createApp({
    root,
    book: linkBook([readSheet(BOLTS, '10-bolts.md'), readSheet(NUTS, '20-nuts.md')]),
    home: '10-bolts',
    missing,
    store: createStore(storage, now),
    theme: { root: h('html'), shelf: storage, prefersDark: () => false },
    now,
  });
  app.open(hash);
  const field = () => root.querySelector<HTMLInputElement>('#width')!;
  const type = (text: string) => {
    field().value = text;
    field().dispatchEvent(new FocusEvent('blur'));
  };
  return { app, root, shelf, field, type };
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
  const { app: opened, root, shelf, type } = open();
  type('5');
  await opened.desk.settled();
  await vi.waitFor(() => expect(textOf(root.querySelector('#twice strong'))).toBe('10 in'));
  opened.save();
  expect(shelf.get(KEY)).toContain('"width":{"text":"5","unit":"in"}');
  opened.open('#/20-nuts');
  expect(textOf(root.querySelector('#width strong'))).toBe('5 in');
  expect(textOf(root.querySelector('.stop.fails'))).toContain('Nuts a check fails');
});

test('what was stored stands in the fields', () => {
  const job = withEntry(NEW_JOB, '10-bolts', 'width', { text: '3 1/8', unit: 'in' });
  const { field, root } = open({ stored: formatJob(job) });
  expect(field().value).toBe('3 1/8');
  expect(root.querySelector<HTMLElement>('.welcome')?.hidden).toBe(true);
});

test('the welcome goes with the first change', () => {
  const { root, type } = open();
  expect(root.querySelector<HTMLElement>('.welcome')?.hidden).toBe(false);
  type('4');
  expect(root.querySelector<HTMLElement>('.welcome')?.hidden).toBe(true);
});

test('a stored job that cannot be read, and a sheet that is missing, are told', () => {
  const { root } = open({ stored: 'damaged', missing: ['notebooks/30-torque.md'] });
  const alert = textOf(root.querySelector('[role=alert]'));
  expect(alert).toContain('Could not be loaded: notebooks/30-torque.md.');
  expect(alert).toContain('kept aside');
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
  const job = withEntry(NEW_JOB, '10-bolts', 'width', { text: '7', unit: 'in' });
  opened.adopt(formatJob(job));
  opened.adopt(formatJob(job));
  opened.adopt('damaged');
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
    missing: ['notebooks/10-bolts.md'],
    store: createStore({ getItem: () => null, setItem: () => {} }, () => new Date()),
    theme: { root: h('html'), shelf: localStorage, prefersDark: () => false },
    now: () => new Date(),
  });
  app.open('');
  expect(textOf(root.querySelector('h1'))).toBe('There is no sheet here');
});
