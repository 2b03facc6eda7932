import { openDatabase } from '../../src/job/database.ts';
import { type Job, NEW_JOB } from '../../src/job/record.ts';
import { createShelf } from '../../src/job/shelf.ts';
import { createStore, type JobStore } from '../../src/job/store.ts';
import { h } from '../../src/page/element.ts';
import { createSession, type Session, type Word } from '../../src/page/session.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { makeShelf } from '../job/made-shelf.ts';

export const BOLTS = `# Bolts

\`\`\`given
width = 3 in "Width"
\`\`\`

\`\`\`work
twice = 2 * width as in
\`\`\`

\`\`\`steps "Sign-off"
- Clean
\`\`\`
`;

export const DEMO: Job = { ...NEW_JOB, title: 'The demo' };
export const NOON = new Date('2026-03-14T12:00:00Z');

let count = 0;

/** A browser with a database of its own, and the windows that are open in it. */
export function makeBrowser() {
  count += 1;
  const name = `layshaft-test-${Date.now()}-${count}`;
  const shelf = makeShelf();
  const windows: { readonly root: HTMLElement; readonly session: Session }[] = [];

  const openStore = (): JobStore =>
    createStore(
      (onGone) => openDatabase(onGone, name),
      shelf,
      () => NOON,
    );

  /** A window, with what it remembers of its own. */
  async function openWindow(tab = new Map<string, string>(), store = openStore()) {
    const root = h('div');
    document.body.append(root);
    const words: Word[] = [];
    const mine: { hash: string; persisted: number } = { hash: '', persisted: 0 };
    const session = await createSession({
      root,
      sheets: [readSheet(BOLTS, '10-bolts.md')],
      home: '10-bolts',
      store,
      theme: { root: h('html'), shelf: createShelf(() => localStorage), prefersDark: () => false },
      demo: DEMO,
      standing: [],
      tab: {
        getItem: (key) => tab.get(key) ?? null,
        setItem: (key, value) => void tab.set(key, value),
      },
      tell(word) {
        words.push(word);
        for (const one of windows) if (one.root !== root) void one.session.hear(word);
      },
      persist: () => {
        mine.persisted += 1;
      },
      hash: () => mine.hash,
      goTo: (hash) => {
        mine.hash = hash;
      },
      now: () => NOON,
    });
    windows.push({ root, session });
    session.greet();
    const field = () => root.querySelector<HTMLInputElement>('#width')!;
    return {
      session,
      root,
      tab,
      store,
      words,
      mine,
      field,
      type(text: string) {
        field().value = text;
        field().dispatchEvent(new FocusEvent('blur'));
      },
      title: () => root.querySelector('.job-title')?.textContent ?? '',
      alert: () => root.querySelector('[role=alert] p')?.textContent ?? '',
      close() {
        windows.splice(0, windows.length, ...windows.filter((one) => one.session !== session));
        session.dispose();
        root.remove();
      },
    };
  }

  function clear(): Promise<void> {
    return new Promise((resolve) => {
      indexedDB.deleteDatabase(name).onsuccess = () => resolve();
    });
  }

  return { name, openWindow, openStore, clear };
}

/** A browser that keeps nothing. */
export function makeBlockedStore(): JobStore {
  return createStore(
    async () => {
      throw new DOMException('denied', 'SecurityError');
    },
    makeShelf(),
    () => NOON,
  );
}
