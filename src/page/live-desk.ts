import { type History, record, redo, undo } from '../job/history.ts';
import {
  captionIn,
  changedEntries,
  entryIn,
  type Job,
  noteIn,
  tickIn,
  withAttempt,
  withCaption,
  withEntry,
  withNote,
  withSheetVersion,
  withSystem,
  withTick,
} from '../job/record.ts';
import { sheetVersion } from '../job/sheet-version.ts';
import type { Value } from '../language/kind.ts';
import type { Book } from '../sheet/book.ts';
import type { GivenCell } from '../sheet/cell.ts';
import type { Entry } from '../sheet/reading.ts';
import { outcomeOf, solve, valueOfCell } from '../sheet/solve.ts';
import { verdictOf } from '../sheet/verdict.ts';
import { warningsOf } from '../sheet/warnings.ts';
import type { System } from '../units/unit.ts';
import { nameEntryChange, nameTickChange } from './change-words.ts';
import type { Desk, Doubt } from './desk.ts';
import { createLateDrive } from './late-drive.ts';
import { loadDoubt } from './load-views.ts';
import { startSimulation } from './run-simulation.ts';

/** A desk with a job on it. */
export interface LiveDesk extends Desk {
  history(): History;
  undo(): void;
  redo(): void;
  chooseSystem(system: System): void;
  /** Resolves when every result follows from what was entered. */
  settled(): Promise<void>;
  dispose(): void;
}

export interface DeskOptions {
  readonly book: Book;
  /** The job with what led to it. */
  readonly history: History;
  /** The day that a tick is dated with, `2026-03-14`. */
  today(): string;
  /** Called once for all cells that were worked together. */
  onWorked(cells: ReadonlySet<number>): void;
  /** Called when the job is another one, with the history that led to it. */
  onJob(history: History, before: Job): void;
}

/** Puts a job on a book of sheets and keeps both in step: entries go in, results come out. */
export function createLiveDesk(options: DeskOptions): LiveDesk {
  const { book } = options;
  const drive = createLateDrive(book, gather);
  let doubt: Doubt | undefined;
  let history = options.history;
  let worked = new Set<number>();
  enterAll(book, history.job, drive.enter);
  // Once at hand, so that the first page shows results and not their absence.
  solve(book, drive.frame);
  const doubtArrived = loadDoubt().then(
    (loaded) => {
      doubt = loaded;
      for (const { index } of book.cells) gather(index);
    },
    () => {},
  );

  function gather(cell: number): void {
    if (worked.size === 0) queueMicrotask(flush);
    worked.add(cell);
  }

  function flush(): void {
    const cells = worked;
    worked = new Set();
    options.onWorked(cells);
  }

  function follow(next: History): void {
    const before = history.job;
    if (next === history) return;
    history = next;
    for (const [sheet, name] of changedEntries(before, next.job)) {
      const cell = book.find(sheet, name);
      if (cell?.role !== 'given') continue;
      drive.enter(cell.index, entryIn(next.job, sheet, name));
      // The field answers at once; what hangs on it follows with the next frame.
      gather(cell.index);
    }
    options.onJob(history, before);
  }

  /** The job, with the version of the sheet that it has just been filled in on. */
  function stamp(job: Job, name: string): Job {
    const sheet = book.sheets.find((one) => one.name === name);
    return sheet === undefined ? job : withSheetVersion(job, name, sheetVersion(sheet));
  }

  const desk: LiveDesk = {
    book,
    frame: () => drive.frame,
    valueIn: (frame, cell) => valueOfCell(cell, frame),
    now: () => performance.now(),
    recordAttempt(sheet, question, attempt) {
      follow(
        record(
          history,
          `answer to ${question}`,
          withAttempt(history.job, sheet, question, attempt),
        ),
      );
    },
    job: () => history.job,
    system: () => history.job.system,
    outcomeOf: (cell) => outcomeOf(book, drive.frame, cell),
    readingOf: (cell) => drive.frame.readings[cell.index]!,
    warningsOf: (cell) => warningsOf(book, drive.frame, cell),
    doubt: () => doubt,
    spreadOf: (cell) => doubt?.spreadOf(book, drive.frame, cell) ?? [],
    simulate(cell, simulation, watch) {
      return startSimulation(book, entriesOf(book, history.job), cell, simulation, watch);
    },
    verdictOf: (check) => verdictOf(book, drive.frame, check),
    workOut: (formula) => formula.code.run(drive.frame.memory) as Value | undefined,
    entryOf: (cell) => entryIn(history.job, cell.sheet, cell.name),
    enter(cell, entry, mark) {
      const job = stamp(withEntry(history.job, cell.sheet, cell.name, entry), cell.sheet);
      const from = startOf(history, mark);
      follow(
        record(
          history,
          nameEntryChange(cell, entryIn(from, cell.sheet, cell.name), entry),
          job,
          mark,
        ),
      );
    },
    dayOf: (sheet, step) => tickIn(history.job, sheet, step.id)?.on,
    tick(sheet, step, done) {
      const day = done ? options.today() : undefined;
      const job = stamp(withTick(history.job, sheet, step.id, day), sheet);
      follow(record(history, nameTickChange(step, done), job));
    },
    signerOf: (sheet, step) => tickIn(history.job, sheet, step.id)?.by,
    worker: () => history.job.worker,
    setWorker(name) {
      if (name === history.job.worker) return;
      follow(record(history, `steps signed by ${name}`, { ...history.job, worker: name }));
    },
    noteOn: (sheet, block) => noteIn(history.job, sheet, block) ?? '',
    setNote(sheet, block, text) {
      if (text === (noteIn(history.job, sheet, block) ?? '')) return;
      const job = stamp(withNote(history.job, sheet, block, text), sheet);
      follow(record(history, `note on ${block}`, job));
    },
    captionOn: (sheet, figure) => captionIn(history.job, sheet, figure) ?? {},
    setCaption(sheet, figure, words) {
      const before = captionIn(history.job, sheet, figure) ?? {};
      if (before.caption === words.caption && before.alt === words.alt) return;
      const job = stamp(withCaption(history.job, sheet, figure, words), sheet);
      follow(record(history, `words under ${figure}`, job));
    },
    chooseSystem(system) {
      follow(record(history, `units to ${system}`, withSystem(history.job, system)));
    },
    replace: (label, job) => follow(record(history, label, job)),
    history: () => history,
    undo: () => follow(undo(history)),
    redo: () => follow(redo(history)),
    settled: () => Promise.all([drive.settled(), doubtArrived]).then(() => {}),
    dispose: drive.dispose,
  };
  return desk;
}

/** The job before the step that a mark belongs to: a drag is named from where it began. */
function startOf({ job, past }: History, mark: string | undefined): Job {
  const last = past.at(-1);
  return mark !== undefined && last?.mark === mark ? last.before : job;
}

function enterAll(
  book: Book,
  job: Job,
  enter: (index: number, entry: ReturnType<typeof entryIn>) => void,
): void {
  const givens = book.cells.filter((cell): cell is GivenCell => cell.role === 'given');
  for (const { index, sheet, name } of givens) {
    const entry = entryIn(job, sheet, name);
    if (entry !== undefined) enter(index, entry);
  }
}

/** What was typed, by cell, for whoever works the book elsewhere. */
function entriesOf(book: Book, job: Job): readonly (readonly [number, Entry])[] {
  return book.cells.flatMap((cell) => {
    const entry = cell.role === 'given' ? entryIn(job, cell.sheet, cell.name) : undefined;
    return entry === undefined ? [] : [[cell.index, entry] as const];
  });
}
