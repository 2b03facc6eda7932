import { listMisfits } from '../job/fit.ts';
import type { History } from '../job/history.ts';
import { formatSorted } from '../job/json.ts';
import type { Saved } from '../job/keeper.ts';
import type { Job } from '../job/record.ts';
import type { Book } from '../sheet/book.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { downloadJob } from './download.ts';
import { fill, h } from './element.ts';
import { createFirstScreen } from './first-screen.ts';
import { createFitNote } from './fit-note.ts';
import { createForeignNote } from './foreign-note.ts';
import { createHeader } from './header.ts';
import { listenForKeys } from './keys.ts';
import { type Destination, parseDestination, sheetHref } from './link.ts';
import { createLiveDesk, type LiveDesk } from './live-desk.ts';
import { loadReport } from './load-views.ts';
import { createOnward } from './onward.ts';
import { createPaperHead } from './paper-head.ts';
import { reveal } from './reveal.ts';
import { createRoute } from './route.ts';
import { createSaver } from './saver.ts';
import { createSheetView } from './sheet-view.ts';
import { createBlankJob, createExampleJob, createStartOver } from './start-over.ts';
import { createStatus } from './status.ts';
import { inferStop } from './stop.ts';
import { createSystemSwitch } from './system-switch.ts';
import { tallySheet } from './tally.ts';
import { createThemeSwitch, type ThemeHost } from './theme.ts';
import { createTroubleBar } from './trouble-bar.ts';

/** Something that fills the page under the header. */
export interface PageView {
  /** The name by which the address knows it. */
  readonly name: string;
  readonly heading: string;
  readonly title: HTMLElement;
  /** What stands below the title. */
  readonly nodes: readonly Node[];
  /** Mutates what shows these cells. */
  refresh(cells: ReadonlySet<number>): void;
  /** Mutates all of it: the job is another one. */
  refreshAll(): void;
  dispose(): void;
}

/** What the page needs from the world around it. */
export interface AppHost {
  readonly root: HTMLElement;
  readonly book: Book;
  /** Name of the sheet that opens where the address names none. */
  readonly home: string;
  /** The job that is open, with what led to it. */
  readonly history: History;
  /** When it was last saved, where it was. */
  readonly savedAt?: Date;
  /** True while it is the demo as it came. */
  readonly isDemo: boolean;
  /** What is to be said until the person has taken note of it. */
  readonly standing: readonly string[];
  readonly theme: ThemeHost;
  save(history: History): Promise<Saved>;
  newJob(): void;
  /** The job has other sheets from outside now: all is to be set up anew. */
  relink(): void;
  /** A page that is no sheet, by its name in the address: `#/jobs`. */
  openPage(name: string, desk: LiveDesk): Promise<PageView> | undefined;
  now(): Date;
}

export interface App {
  readonly desk: LiveDesk;
  /** Opens the sheet, and brings the cell into view, that an address names. */
  open(hash: string): void;
  /** Takes in what another window has stored, as a step that can be undone. */
  adopt(job: Job): void;
  /** Saves at once what is not saved yet. */
  save(): Promise<void>;
  /** True while something is not saved. */
  isBehind(): boolean;
  /** Says something until the person has taken note of it. */
  announce(sentence: string): void;
  dispose(): void;
}

/** The whole page: header, route, the open sheet, and the word for those who listen. */
export function createApp(host: AppHost): App {
  const { book } = host;
  let standing = [...new Set(host.standing)];
  const desk = createLiveDesk({
    book,
    history: host.history,
    today: () => formatDay(host.now()),
    onWorked,
    onJob,
  });
  const saver = createSaver({ history: desk.history, save: host.save, tell: showSaved });
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
  const welcome = createFirstScreen({ newJob: host.newJob, showTour: () => void showTour() });
  const afresh = createStartOver({ startBlank, startFromExample });
  const paper = createPaperHead(host.now);
  const main = h('main', { id: 'open-sheet', tabindex: -1 });
  const floor = h('div', { class: 'floor' });
  let view: PageView | undefined;
  /** The page that was asked for last: a slower one that was asked for before it is not shown. */
  let wanted = '';
  let changed = new Set<number>();

  host.root.replaceChildren(
    createSkipLink(main),
    header.element,
    trouble.element,
    h('div', { class: 'desk' }, route.element, main),
    floor,
    status.element,
  );
  const deafen = listenForKeys(document, desk);
  showStanding();
  if (host.savedAt !== undefined) header.showSaved({ state: 'saved', at: host.savedAt });
  showJob(desk.history());

  function onWorked(cells: ReadonlySet<number>): void {
    view?.refresh(cells);
    showRoute();
    for (const cell of cells) changed.add(cell);
  }

  function onJob(history: History, before: Job): void {
    showJob(history);
    if (!isOnlyEntries(history.job, before)) view?.refreshAll();
    saver.touch();
    changed = new Set();
    status.tell(tellChange);
    if (!hasSameSheets(history.job, before)) host.relink();
  }

  async function tellChange(): Promise<string> {
    const sheet = book.sheets.find((one) => one.name === view?.name);
    const report = await loadReport().catch(() => undefined);
    if (sheet === undefined || report === undefined) return '';
    return report.reportChange(desk, sheet, changed);
  }

  function showJob(history: History): void {
    header.show(history);
    units.show(history.job.system);
    paper.show(history.job);
    welcome.hidden = !host.isDemo || history.job !== host.history.job;
    showRoute();
  }

  function showRoute(): void {
    if (view === undefined) return;
    route.show(view.name, (sheet) => inferStop(tallySheet(desk, sheet)));
  }

  function showStanding(): void {
    const said = standing.length === 0 ? undefined : standing.join(' ');
    trouble.show(said, { label: 'Understood', act: takeNote });
  }

  function takeNote(): void {
    standing = [];
    showStanding();
  }

  function announce(sentence: string): void {
    standing = [...new Set([...standing, sentence])];
    showStanding();
  }

  function showSaved(saved: Saved): void {
    header.showSaved(saved);
    if (saved.state === 'failed') {
      const download = () => downloadJob(desk.job());
      trouble.show(saved.trouble, { label: 'Download the job', act: download });
      return;
    }
    showStanding();
    if (saved.state !== 'copied') return;
    announce(
      `This job was saved in another window first. Nothing was overwritten: this window goes on with a copy, "${saved.title}".`,
    );
    desk.replace('kept as a copy', { ...desk.job(), title: saved.title });
  }

  function startBlank(): void {
    desk.replace('start blank', createBlankJob(book, desk.job()));
  }

  function startFromExample(): void {
    desk.replace('back to the worked example', createExampleJob(desk.job()));
  }

  async function showTour(): Promise<void> {
    const { createTour } = await import('./tour.ts');
    const tour = createTour(() => main.focus());
    floor.replaceChildren(tour);
    tour.focus();
  }

  function open(hash: string): void {
    const destination = parseDestination(hash) ?? { sheet: home?.name ?? '' };
    wanted = destination.sheet;
    if (view?.name === destination.sheet) {
      show(destination);
      return;
    }
    const page = host.openPage(destination.sheet, desk);
    if (page === undefined) {
      mount(createSheetPage(destination));
      show(destination);
      return;
    }
    void page.then((opened) => {
      if (wanted === destination.sheet) {
        mount(opened);
        show(destination);
      } else opened.dispose();
    });
  }

  function show({ cell }: Destination): void {
    if (cell !== undefined) reveal(document.getElementById(cell));
  }

  function createSheetPage({ sheet: name }: Destination): PageView | undefined {
    const sheet = book.sheets.find((one) => one.name === name) ?? home;
    if (sheet === undefined) return undefined;
    const { title, nodes, ...shown } = createSheetView(desk, sheet);
    const notes = [createForeignNote(desk.job(), sheet), createMisfitNote(sheet)];
    const around = notes.filter((note) => note !== undefined);
    const end = [createOnward(book.sheets, sheet), afresh];
    const rest = nodes.filter((node) => node !== title);
    return {
      ...shown,
      name: sheet.name,
      heading: sheet.title,
      title,
      nodes: [welcome, ...around, ...rest, ...end],
    };
  }

  function createMisfitNote({ name }: Sheet): HTMLElement | undefined {
    const misfit = listMisfits(desk.job(), book).find(({ sheet }) => sheet === name);
    return misfit === undefined ? undefined : createFitNote(misfit);
  }

  function mount(page: PageView | undefined): void {
    const isFirst = view === undefined;
    view?.dispose();
    view = page;
    if (page === undefined) {
      fill(main, h('h1', {}, 'There is no sheet here'));
      return;
    }
    fill(main, paper.element, page.title, ...page.nodes);
    document.title = `${page.heading} · Layshaft`;
    paper.name(page.heading);
    showRoute();
    if (isFirst) return;
    window.scrollTo({ top: 0, behavior: 'instant' });
    page.title.focus({ preventScroll: true });
  }

  return {
    desk,
    open,
    adopt: (job) => desk.replace('change in another window', job),
    save: saver.flush,
    isBehind: saver.isBehind,
    announce,
    dispose() {
      deafen();
      saver.dispose();
      status.dispose();
      view?.dispose();
      desk.dispose();
      host.root.replaceChildren();
    },
  };
}

/** True where two jobs differ in entries alone, which the cells tell of themselves. */
function isOnlyEntries(after: Job, before: Job): boolean {
  const names = Object.keys({ ...before, ...after }) as (keyof Job)[];
  return names.every(
    (name) => name === 'entries' || name === 'sheets' || after[name] === before[name],
  );
}

function hasSameSheets({ foreign }: Job, before: Job): boolean {
  return foreign === before.foreign || formatSorted(foreign) === formatSorted(before.foreign);
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
