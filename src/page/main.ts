import { createStore } from '../job/store.ts';
import { linkBook } from '../sheet/book.ts';
import { readSheet } from '../sheet/read-sheet.ts';
import { createApp } from './app.ts';

/** The text of every sheet, by its path. */
const SOURCES: Readonly<Record<string, string>> = import.meta.glob('../../notebooks/*.md', {
  query: '?raw',
  import: 'default',
  eager: true,
});

const sheets = Object.entries(SOURCES)
  .map(([path, source]) => readSheet(source, path.replace(/^(\.\.\/)+/, '')))
  .sort((a, b) => (a.number ?? 0) - (b.number ?? 0) || a.name.localeCompare(b.name));

const dark = matchMedia('(prefers-color-scheme: dark)');
const app = createApp({
  root: document.getElementById('layshaft-page')!,
  book: linkBook(sheets),
  store: createStore(localStorage, () => new Date()),
  theme: { root: document.documentElement, shelf: localStorage, prefersDark: () => dark.matches },
  now: () => new Date(),
});

app.open(location.hash);
addEventListener('hashchange', () => app.open(location.hash));
addEventListener('pagehide', app.save);
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') app.save();
});
// A link to where one is already changes no address, and is followed all the same.
document.addEventListener('click', (event) => {
  const link = event.target instanceof Element ? event.target.closest('a[href^="#/"]') : null;
  if (link !== null && link.getAttribute('href') === location.hash) app.open(location.hash);
});
