import { createStore, KEY } from '../job/store.ts';
import { linkBook } from '../sheet/book.ts';
import { createApp } from './app.ts';
import { fetchSheets } from './fetch-sheets.ts';
import { loadAllDrawings } from './load-drawings.ts';

/** Where the text of every sheet lies. Sheets are data: the script that shows them stays small. */
const ADDRESSES: Readonly<Record<string, string>> = import.meta.glob('../../notebooks/*.md', {
  query: '?url&no-inline',
  import: 'default',
  eager: true,
});

/** The sheet that shows soonest what the page is for: three figures in, a chart out. */
const HOME = '20-gearing';

/** When the first page has been drawn and looked at, in milliseconds. */
const IDLE = 1500;

const { sheets, missing } = await fetchSheets(ADDRESSES, fetch.bind(globalThis));
const dark = matchMedia('(prefers-color-scheme: dark)');
const app = createApp({
  root: document.getElementById('layshaft-page')!,
  book: linkBook(sheets),
  home: HOME,
  missing,
  store: createStore(localStorage, () => new Date()),
  theme: { root: document.documentElement, shelf: localStorage, prefersDark: () => dark.matches },
  now: () => new Date(),
});

app.open(location.hash);
setTimeout(loadAllDrawings, IDLE);
addEventListener('hashchange', () => app.open(location.hash));
addEventListener('pagehide', app.save);
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') app.save();
});
// Another window of this browser has the same job open: what is done there is done here.
addEventListener('storage', ({ key, newValue }) => {
  if (key === KEY && newValue !== null) app.adopt(newValue);
});
// A link to where one is already changes no address, and is followed all the same.
document.addEventListener('click', (event) => {
  const link = event.target instanceof Element ? event.target.closest('a[href^="#/"]') : null;
  if (link !== null && link.getAttribute('href') === location.hash) app.open(location.hash);
});
