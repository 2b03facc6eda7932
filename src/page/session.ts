import { freshId } from '../job/fresh-id.ts';
import { createHistory, type History } from '../job/history.ts';
import { createKeeper, type Keeper } from '../job/keeper.ts';
import { formatJob } from '../job/read-job.ts';
import { type Job, NEW_JOB } from '../job/record.ts';
import type { JobStore } from '../job/store.ts';
import { linkBook } from '../sheet/book.ts';
import { readSheet } from '../sheet/read-sheet.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { type App, createApp } from './app.ts';
import { compareSheets } from './fetch-sheets.ts';
import type { JobsHost } from './jobs-host.ts';
import type { LiveDesk } from './live-desk.ts';
import { describeIssues } from './session-words.ts';
import { createBlankJob } from './start-over.ts';
import type { ThemeHost } from './theme.ts';

/** What windows of the same browser tell each other. */
export type Word =
  | { readonly type: 'saved'; readonly id: string; readonly revision: number }
  /** Asks whether another window has the job open. */
  | { readonly type: 'opened'; readonly id: string }
  | { readonly type: 'here'; readonly id: string };

export interface SessionHost {
  readonly root: HTMLElement;
  /** Those of the house, in the order of the job. */
  readonly sheets: readonly Sheet[];
  readonly home: string;
  readonly store: JobStore;
  readonly theme: ThemeHost;
  /** The job that opens where nothing is stored. */
  readonly demo: Job;
  /** What is to be said at the start. */
  readonly standing: readonly string[];
  /** Remembers which job this window has open, as long as the window lives. */
  readonly tab: Pick<Storage, 'getItem' | 'setItem'>;
  /** Tells the other windows. */
  tell(word: Word): void;
  /** Asks the browser not to clear what is kept, once it holds something. */
  persist(): void;
  hash(): string;
  /** Mutates the address without a step in the browser's history. */
  goTo(hash: string): void;
  now(): Date;
}

/** A job to be opened. */
export interface Opening {
  readonly id: string;
  readonly revision: number;
  readonly history: History;
  readonly savedAt?: Date;
  readonly isDemo?: boolean;
  readonly standing: readonly string[];
}

export interface Session extends JobsHost {
  /** The desk with the job that is open now. */
  desk(): LiveDesk;
  open(hash: string): void;
  /** Asks whether another window has the same job open; called once it can be heard. */
  greet(): void;
  /** Another window has said something. */
  hear(word: Word): Promise<void>;
  /** The page is being hidden: saves what is not saved. */
  save(): Promise<void>;
  /** The page goes: leaves word of what is not saved. */
  leave(): void;
  isBehind(): boolean;
  announce(sentence: string): void;
  dispose(): void;
}

const TAB_KEY = 'layshaft/open';

/** Opens a job, shows it, keeps it, and changes over to others. */
export async function createSession(host: SessionHost): Promise<Session> {
  const { store } = host;
  let app: App | undefined;
  let keeper: Keeper | undefined;
  let hasPersisted = false;
  let remembered: string | undefined;
  show(await findStart(host));

  function show(opening: Opening): void {
    app?.dispose();
    const { id, revision, history } = opening;
    const kept = createKeeper(store, { id, revision, job: history.job }, host.now, onSaved);
    keeper = kept;
    app = createApp({
      root: host.root,
      book: linkBook([...host.sheets, ...readForeign(history.job)].sort(compareSheets)),
      home: host.home,
      history,
      isDemo: opening.isDemo ?? false,
      standing: opening.standing,
      theme: host.theme,
      save: kept.save,
      newJob,
      relink: () => void relink(),
      openPage: (name, desk) => (name === 'jobs' ? openJobs(desk) : undefined),
      now: host.now,
      ...(opening.savedAt === undefined ? {} : { savedAt: opening.savedAt }),
    });
    if (revision > 0) remember(id);
    app.open(host.hash());
  }

  async function openJobs(desk: App['desk']) {
    const { createJobsPage } = await import('./jobs-page.ts');
    return createJobsPage(desk, session);
  }

  function onSaved(id: string, revision: number): void {
    host.tell({ type: 'saved', id, revision });
    if (!hasPersisted) host.persist();
    hasPersisted = true;
    remember(id);
  }

  function remember(id: string): void {
    if (id === remembered) return;
    remembered = id;
    rememberHere(id);
    void store.set('open', id);
    greet();
  }

  function rememberHere(id: string): void {
    try {
      host.tab.setItem(TAB_KEY, id);
    } catch {
      // The window then opens the job that was saved last.
    }
  }

  /** Asks whether another window has the same job open. */
  function greet(): void {
    if (remembered !== undefined) host.tell({ type: 'opened', id: remembered });
  }

  async function openJob(id: string): Promise<void> {
    await app?.save();
    const opening = await loadJob(store, id);
    if (opening === undefined) return app?.announce('This job is no longer in this browser.');
    if (typeof opening === 'string') return app?.announce(opening);
    host.goTo('#/');
    show(opening);
  }

  /** Opens a job that stands nowhere yet, and saves it as one more. */
  async function openCopy(job: Job, standing: readonly string[], hash = '#/'): Promise<void> {
    await app?.save();
    host.goTo(hash);
    const history = createHistory(job);
    show({ id: freshId(), revision: 0, history, standing });
    const saved = await keeper?.save(history);
    if (saved?.state === 'failed') app?.announce(saved.trouble);
  }

  function newJob(): void {
    void openCopy(createBlankJob(linkBook(host.sheets), currentJob()), []);
  }

  /** Sheets from outside came or went by undo, or in another window. */
  async function relink(): Promise<void> {
    await app?.save();
    if (app !== undefined) await session.reopen(app.desk.history(), host.hash());
  }

  function currentJob(): Job {
    return app?.desk.job() ?? NEW_JOB;
  }

  async function hear(word: Word): Promise<void> {
    if (word.id !== keeper?.id()) return;
    if (word.type === 'opened') return host.tell({ type: 'here', id: word.id });
    if (word.type === 'here') {
      app?.announce(
        'This job is open in another window too. What is done there is taken over here, and the other way about.',
      );
      return;
    }
    if (word.revision > keeper.revision() && app?.isBehind() === false) await follow(word.id);
  }

  /** Takes over what another window saved. */
  async function follow(id: string): Promise<void> {
    const loaded = await store.load(id);
    if (loaded.state !== 'loaded' || id !== keeper?.id() || app?.isBehind() !== false) return;
    const { job } = loaded.history;
    const isSame = formatJob(job) === formatJob(currentJob());
    keeper.follow(isSame ? currentJob() : job, loaded.revision);
    if (!isSame) app.adopt(job);
  }

  const session: Session = {
    store,
    now: host.now,
    sheets: host.sheets,
    desk: () => app!.desk,
    currentId: () => keeper?.id() ?? '',
    openJob,
    newJob,
    openCopy,
    async openDemo() {
      await app?.save();
      host.goTo('#/');
      show({ ...demoOpening(host.demo), standing: [] });
    },
    /** The same job beside other sheets: one from outside was taken in or let go. */
    async reopen(history, hash) {
      await app?.save();
      const saved = await keeper?.save(history);
      const isFailed = saved?.state === 'failed';
      host.goTo(hash);
      show({
        id: keeper?.id() ?? freshId(),
        revision: keeper?.revision() ?? 0,
        history,
        standing: isFailed ? [saved.trouble] : [],
        ...(isFailed ? {} : { savedAt: host.now() }),
      });
    },
    announce: (sentence) => app?.announce(sentence),
    open: (hash) => app?.open(hash),
    hear,
    greet,
    save: async () => app?.save(),
    leave() {
      if (app === undefined || keeper === undefined) return;
      // Also where the job was not saved even once: it is known by nothing else.
      if (keeper.rescue(app.desk.history())) rememberHere(keeper.id());
    },
    isBehind: () => app?.isBehind() ?? false,
    dispose: () => app?.dispose(),
  };
  return session;
}

/** The job that this window had open, else the one that was opened last, else the demo. */
async function findStart(host: SessionHost): Promise<Opening> {
  const { store, standing } = host;
  const ids = [recall(host.tab), await store.setting('open'), (await store.list())[0]?.id];
  const troubles: string[] = await findBlock(store);
  for (const id of new Set(ids)) {
    if (id === undefined) continue;
    const opening = await loadJob(store, id);
    if (opening === undefined) continue;
    if (typeof opening === 'string') troubles.push(opening);
    else return { ...opening, standing: [...standing, ...troubles, ...opening.standing] };
  }
  return { ...demoOpening(host.demo), standing: [...standing, ...troubles] };
}

/** A browser that keeps nothing is told of before anything is typed. */
async function findBlock(store: JobStore): Promise<string[]> {
  const loaded = await store.load('');
  return loaded.state === 'failed' ? [loaded.trouble] : [];
}

function recall(tab: SessionHost['tab']): string | undefined {
  try {
    return tab.getItem(TAB_KEY) ?? undefined;
  } catch {
    return undefined;
  }
}

function demoOpening(demo: Job): Omit<Opening, 'standing'> {
  return { id: freshId(), revision: 0, history: createHistory(demo), isDemo: true };
}

/** A stored job to be opened; a sentence where it cannot be; undefined where there is none. */
async function loadJob(store: JobStore, id: string): Promise<Opening | string | undefined> {
  const loaded = await store.load(id);
  switch (loaded.state) {
    case 'none':
      return undefined;
    case 'failed':
      return loaded.trouble;
    case 'unreadable': {
      const isKept = await store.keepAside(loaded.text, loaded.trouble);
      if (isKept) await store.remove(id);
      return `A job in this browser cannot be read. ${loaded.trouble}. It is kept as it is: under Jobs it can be downloaded.`;
    }
    case 'loaded': {
      const { revision, history, savedAt, issues } = loaded;
      return { id, revision, history, savedAt, standing: describeIssues(issues) };
    }
    default:
      return loaded satisfies never;
  }
}

/** Sheets from outside that the job brings along. */
function readForeign({ foreign }: Job): readonly Sheet[] {
  return Object.entries(foreign).map(([name, { text }]) => readSheet(text, `${name}.md`));
}
