import { openDatabase } from '../job/database.ts';
import { isLink } from '../job/link-form.ts';
import { createShelf } from '../job/shelf.ts';
import { createStore } from '../job/store.ts';
import { listenForDrops } from './drops.ts';
import { fetchSheets } from './fetch-sheets.ts';
import { loadDemo } from './load-demo.ts';
import { loadAllDrawings } from './load-drawings.ts';
import { loadAllViews } from './load-views.ts';
import { createSession, type Word } from './session.ts';
import { ADDRESSES, DEMO, fetchText } from './shipped.ts';
import { takeOverOldShelf } from './take-over.ts';

/** The sheet that shows soonest what the page is for: three figures in, a chart out. */
const HOME = '20-gearing';

/** When the first page has been drawn and looked at, in milliseconds. */
const IDLE = 1500;

const now = (): Date => new Date();
const shelf = createShelf(() => localStorage);
const store = createStore((onGone) => openDatabase(onGone), shelf, now);
const [{ sheets, missing }, demo] = await Promise.all([
  fetchSheets(ADDRESSES, fetchText),
  loadDemo(DEMO, fetchText),
  takeOverOldShelf(store, () => localStorage),
]);
const dark = matchMedia('(prefers-color-scheme: dark)');
const channel = new BroadcastChannel('layshaft');
const session = await createSession({
  root: document.getElementById('layshaft-page')!,
  sheets,
  home: HOME,
  store,
  demo,
  standing: missing.length === 0 ? [] : [nameMissing(missing)],
  theme: {
    root: document.documentElement,
    shelf,
    prefersDark: () => dark.matches,
  },
  tab: createShelf(() => sessionStorage),
  tell: (word) => channel.postMessage(word),
  persist: () => void navigator.storage?.persist?.().catch(() => false),
  hash: () => (isLink(location.hash) ? '' : location.hash),
  goTo: (hash) => history.replaceState(null, '', hash),
  now,
});

channel.addEventListener('message', ({ data }: MessageEvent<Word>) => void session.hear(data));
session.greet();
// Not awaited: what it loads leans on this module, and would wait for it in turn.
if (isLink(location.hash)) void openLink();
// A file that is dropped is opened here: the browser would leave the page for it.
listenForDrops((file) => void openFile(file));
setTimeout(() => void Promise.all([loadAllDrawings(), loadAllViews()]), IDLE);
setTimeout(install, IDLE);
addEventListener('hashchange', () => {
  if (isLink(location.hash)) void openLink();
  else session.open(location.hash);
});
addEventListener('pagehide', session.leave);
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') void session.save();
});
// A link to where one is already changes no address, and is followed all the same.
document.addEventListener('click', (event) => {
  const link = event.target instanceof Element ? event.target.closest('a[href^="#/"]') : null;
  if (link !== null && link.getAttribute('href') === location.hash) session.open(location.hash);
});

/** Only where the app came by the web: a copy on a disk is installed already. */
async function install(): Promise<void> {
  if (!location.protocol.startsWith('http') || !('serviceWorker' in navigator)) return;
  if (import.meta.env.MODE !== 'production') return;
  const [{ installApp }, { createNewerVersion }] = await Promise.all([
    import('./install.ts'),
    import('./newer-version.ts'),
  ]);
  const newer = createNewerVersion({
    async save() {
      await session.save();
      return !session.isBehind();
    },
  });
  document.body.append(newer.element);
  await installApp(navigator.serviceWorker, newer.offer, () => location.reload()).catch(() => {
    // A browser that refuses it runs the app as before, with the line up.
  });
}

async function openFile(file: File): Promise<void> {
  const { takeInFile } = await import('./take-in.ts');
  await takeInFile(session, session.desk(), file);
}

/** What unpacks links is loaded for those who come by one. */
async function openLink(): Promise<void> {
  const { hash } = location;
  history.replaceState(null, '', '#/');
  const { takeInLink } = await import('./take-in.ts');
  await takeInLink(session, session.desk(), hash);
}

function nameMissing(files: readonly string[]): string {
  return `Could not be loaded: ${files.join(', ')}. Load the page again; what you entered is kept.`;
}
