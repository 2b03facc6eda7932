import type { History } from '../job/history.ts';
import { formatJob, parseJob } from '../job/read-job.ts';
import { type Job, NEW_JOB } from '../job/record.ts';
import type { Saved, Store } from '../job/store.ts';
import type { Book } from '../sheet/book.ts';
import { reportChange } from './change-report.ts';
import { fill, h } from './element.ts';
import { createHeader } from './header.ts';
import { listenForKeys } from './keys.ts';
import { type Destination, parseDestination, sheetHref } from './link.ts';
import { createLiveDesk, type LiveDesk } from './live-desk.ts';
import { createOnward } from './onward.ts';
import { createPaperHead } from './paper-head.ts';
import { reveal } from './reveal.ts';
import { createRoute } from './route.ts';
import { createSaver } from './saver.ts';
import { createSheetView, type SheetView } from './sheet-view.ts';
import { createBlankJob, createExampleJob, createStartOver, createWelcome } from './start-over.ts';
import { createStatus } from './status.ts';
import { inferStop } from './stop.ts';
import { createSystemSwitch } from './system-switch.ts';
import { tallySheet } from './tally.ts';
import { createThemeSwitch, type ThemeHost } from './theme.ts';
import { createTroubleBar } from './trouble-bar.ts';

/** What the page needs from the world around it. */
export interface AppHost {
  readonly root: HTMLElement;
  readonly book: Book;
  /** Name of the sheet that opens where the address names none. */
  readonly home: string;
  /** Files of sheets that could not be had. */
  readonly missing: readonly string[];
  readonly store: Store;
  readonly theme: ThemeHost;
  now(): Date;
}

export interface App {
  readonly desk: LiveDesk;
  /** Opens the sheet, and brings the cell into view, that an address names. */
  open(hash: string): void;
  /** Takes in what another window has stored, as a step that can be undone. */
  adopt(stored: string): void;
  /** Saves at once what is not saved yet. */
  save(): void;
  dispose(): void;
}

/** The whole page: header, route, the open sheet, and the word for those who listen. */
export function createApp(host: AppHost): App {
  const { book, store } = host;
  const loaded = store.load();
  const standing = joinSentences(nameMissing(host.missing), loaded.trouble);
  const desk = createLiveDesk({
    book,
    job: loaded.job ?? NEW_JOB,
    today: () => formatDay(host.now()),
    onWorked,
    onJob,
  });
  const saver = createSaver(store, desk.job, showSaved);
  const home = book.sheets.find((sheet) => sheet.name === host.home) ?? book.sheets[0];
  const units = createSystemSwitch(desk.chooseSystem);
  const theme = createThemeSwitch(host.theme);
  const header = createHeader(
    { home: sheetHref(home?.name ?? ''), undo: desk.undo, redo: desk.redo },
    units.element,
    theme,
  );
  const route = createRoute(book.sheets);
  const status = createStatus();
  const trouble = createTroubleBar();
  const welcome = createWelcome(startBlank);
  const afresh = createStartOver({ startBlank, startFromExample });
  const paper = createPaperHead(host.now);
  const main = h('main', { id: 'open-sheet', tabindex: -1 });
  let view: SheetView | undefined;
  let changed = new Set<number>();

  host.root.replaceChildren(
    createSkipLink(main),
    header.element,
    trouble.element,
    h('div', { class: 'desk' }, route.element, main),
    status.element,
  );
  const deafen = listenForKeys(document, desk);
  trouble.show(standing);
  showJob(desk.history());

  function onWorked(cells: ReadonlySet<number>): void {
    view?.refresh(cells);
    showRoute();
    for (const cell of cells) changed.add(cell);
  }

  function onJob(history: History, before: Job): void {
    showJob(history);
    if (history.job.system !== before.system || history.job.ticks !== before.ticks) {
      view?.refreshAll();
    }
    saver.touch();
    changed = new Set();
    status.tell(() => (view === undefined ? '' : reportChange(desk, view.sheet, changed)));
  }

  function showJob(history: History): void {
    header.show(history);
    units.show(history.job.system);
    paper.show(history.job);
    welcome.hidden = history.past.length > 0 || history.job !== NEW_JOB;
    showRoute();
  }

  function showRoute(): void {
    if (view === undefined) return;
    route.show(view.sheet.name, (sheet) => inferStop(tallySheet(desk, sheet)));
  }

  function showSaved(saved: Saved): void {
    header.showSaved(saved);
    trouble.show(saved.state === 'failed' ? saved.trouble : standing);
  }

  function startBlank(): void {
    desk.replace('start blank', createBlankJob(book, desk.job()));
  }

  function startFromExample(): void {
    desk.replace('back to the worked example', createExampleJob(desk.job()));
  }

  function open(hash: string): void {
    const destination = parseDestination(hash) ?? { sheet: home?.name ?? '' };
    const isNew = view?.sheet.name !== destination.sheet;
    if (isNew) mount(destination);
    if (destination.cell !== undefined) reveal(document.getElementById(destination.cell));
  }

  function mount({ sheet: name }: Destination): void {
    const sheet = book.sheets.find((one) => one.name === name) ?? home;
    if (sheet === undefined) {
      fill(main, h('h1', {}, 'There is no sheet here'));
      return;
    }
    const isFirst = view === undefined;
    view?.dispose();
    view = createSheetView(desk, sheet);
    const [title, ...rest] = view.nodes;
    fill(main, paper.element, title, welcome, ...rest, createOnward(book.sheets, sheet), afresh);
    document.title = `${sheet.title} · Layshaft`;
    showRoute();
    if (isFirst) return;
    window.scrollTo({ top: 0, behavior: 'instant' });
    view.title.focus({ preventScroll: true });
  }

  function adopt(stored: string): void {
    const reading = parseJob(stored);
    if (!reading.ok || formatJob(reading.job) === formatJob(desk.job())) return;
    desk.replace('change in another window', reading.job);
  }

  return {
    desk,
    open,
    adopt,
    save: saver.flush,
    dispose() {
      deafen();
      status.dispose();
      view?.dispose();
      desk.dispose();
      host.root.replaceChildren();
    },
  };
}

/** The part of the address that names a sheet stays as it is. */
function createSkipLink(main: HTMLElement): HTMLElement {
  const skip = (event: Event): void => {
    event.preventDefault();
    main.focus();
  };
  return h('a', { class: 'skip', href: '#open-sheet', on: { click: skip } }, 'Skip to the sheet');
}

/** The calendar day where the person is: `2026-03-14`. */
function formatDay(date: Date): string {
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

function nameMissing(missing: readonly string[]): string | undefined {
  if (missing.length === 0) return undefined;
  return `Could not be loaded: ${missing.join(', ')}. Load the page again; what you entered is kept.`;
}

function joinSentences(...sentences: readonly (string | undefined)[]): string | undefined {
  const said = sentences.filter((sentence) => sentence !== undefined);
  return said.length === 0 ? undefined : said.join(' ');
}
