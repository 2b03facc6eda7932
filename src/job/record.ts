import type { Entry } from '../sheet/reading.ts';
import type { System } from '../units/unit.ts';

/** All that a person put into a job. What the sheets bring along is not part of it. */
export interface Job {
  readonly title: string;
  /** Which car it is: `Quarry Lane estate`. */
  readonly vehicle: string;
  /** Who signs the steps that are ticked from now on. */
  readonly worker: string;
  /** In which units the page shows results; what is entered stays as it was typed. */
  readonly system: System;
  /**
   * What was typed, by sheet and by the name of the given: tolerances and repeated readings as they
   * were written, '' where it was left blank, the name of the row where it was picked.
   */
  readonly entries: ByName<ByName<Entry>>;
  /** Steps ticked off, by sheet and step. */
  readonly ticks: ByName<ByName<Tick>>;
  /** Notes on blocks, by sheet and block. */
  readonly notes: ByName<ByName<string>>;
  /** Answers to practice questions, by sheet and question, the oldest first. */
  readonly attempts: ByName<ByName<readonly Attempt[]>>;
  /** Proposals beside the job, in the order in which they were made. */
  readonly variants: readonly Variant[];
  /** Words of one's own under a figure, by sheet and figure. */
  readonly captions: ByName<ByName<Caption>>;
  /** Version of the text of each sheet beside which something was entered. */
  readonly sheets: ByName<string>;
  /** Sheets from outside that belong to the job, by name. */
  readonly foreign: ByName<ForeignSheet>;
  /** Fields of the file that this version does not know: kept as they are. */
  readonly others?: ByName<unknown>;
}

/** A step that was done. */
export interface Tick {
  /** The day: `2026-03-14`. */
  readonly on: string;
  readonly by?: string;
}

/** A proposal: only what it has different. */
export interface Variant {
  readonly name: string;
  /** The variant that it builds on; the job itself where it is left out. */
  readonly base?: string;
  /** What was typed, by sheet and given; a bare number is in the given's own unit. */
  readonly entries: ByName<ByName<string>>;
}

export interface Caption {
  readonly caption?: string;
  /** What the figure shows, for those who do not see it. */
  readonly alt?: string;
}

/** A sheet that did not come with the program. */
export interface ForeignSheet {
  /** Its version: the hash of its text. */
  readonly version: string;
  readonly text: string;
}

/** One answer to a practice question, for the instructor. */
export interface Attempt {
  /** Of the numbers that were asked with. */
  readonly seed: number;
  readonly typed: string;
  /** What the answer told: `right`, `sign`, `mistake` … */
  readonly told: string;
  /** Which of the question's usual mistakes, from 0. */
  readonly mistake?: number;
  readonly seconds: number;
}

export type ByName<T> = { readonly [name: string]: T };

/** A job in which nobody has typed anything: the sheets show their worked examples. */
export const NEW_JOB: Job = {
  title: 'Worked example',
  vehicle: '',
  worker: '',
  system: 'inch-pound',
  entries: {},
  ticks: {},
  notes: {},
  attempts: {},
  variants: [],
  captions: {},
  sheets: {},
  foreign: {},
};

/** What was typed for a given; undefined while the sheet's own example stands. */
export function entryIn(job: Job, sheet: string, name: string): Entry | undefined {
  return own(own(job.entries, sheet) ?? {}, name);
}

/** When, and by whom, a step was ticked off. */
export function tickIn(job: Job, sheet: string, step: string): Tick | undefined {
  return own(own(job.ticks, sheet) ?? {}, step);
}

/** The job with one entry set; `undefined` takes it back to the sheet's example. */
export function withEntry(job: Job, sheet: string, name: string, entry: Entry | undefined): Job {
  return { ...job, entries: withNested(job.entries, sheet, name, entry) };
}

/** The job with one step ticked on a date, signed by whoever is at work; `undefined` unticks it. */
export function withTick(job: Job, sheet: string, step: string, date: string | undefined): Job {
  const by = job.worker === '' ? {} : { by: job.worker };
  const tick = date === undefined ? undefined : { on: date, ...by };
  return { ...job, ticks: withNested(job.ticks, sheet, step, tick) };
}

export function noteIn(job: Job, sheet: string, block: string): string | undefined {
  return own(own(job.notes, sheet) ?? {}, block);
}

/** The job with one note set; a note of no words goes. */
export function withNote(job: Job, sheet: string, block: string, text: string): Job {
  const note = text.trim() === '' ? undefined : text;
  return { ...job, notes: withNested(job.notes, sheet, block, note) };
}

/** Words of one's own under a figure; undefined where those made from the data stand. */
export function captionIn(job: Job, sheet: string, figure: string): Caption | undefined {
  return own(own(job.captions, sheet) ?? {}, figure);
}

/** The job with the words under one figure set; none at all takes back what is made from the data. */
export function withCaption(job: Job, sheet: string, figure: string, words: Caption): Job {
  const kept = Object.entries(words).filter(([, text]) => text !== undefined && text !== '');
  const caption = kept.length === 0 ? undefined : (Object.fromEntries(kept) as Caption);
  return { ...job, captions: withNested(job.captions, sheet, figure, caption) };
}

/** The job with one more answer to a practice question. */
export function withAttempt(job: Job, sheet: string, question: string, attempt: Attempt): Job {
  const before = own(own(job.attempts, sheet) ?? {}, question) ?? [];
  return { ...job, attempts: withNested(job.attempts, sheet, question, [...before, attempt]) };
}

/** The job with the version of a sheet beside which something was entered just now. */
export function withSheetVersion(job: Job, sheet: string, version: string): Job {
  if (own(job.sheets, sheet) === version) return job;
  return { ...job, sheets: withKey(job.sheets, sheet, version) };
}

export function withForeignSheet(job: Job, name: string, sheet: ForeignSheet | undefined): Job {
  return { ...job, foreign: withKey(job.foreign, name, sheet) };
}

export function withSystem(job: Job, system: System): Job {
  return { ...job, system };
}

/** True once a person has typed or ticked something on the sheet; what was only left blank is no start. */
export function isStarted(job: Job, sheet: string): boolean {
  const entries = Object.values(own(job.entries, sheet) ?? {});
  return entries.some(({ text }) => text.trim() !== '') || own(job.ticks, sheet) !== undefined;
}

/** Sheets and names whose entries differ between two jobs. */
export function changedEntries(
  before: Job,
  after: Job,
): readonly (readonly [sheet: string, name: string])[] {
  const changed: (readonly [string, string])[] = [];
  for (const sheet of keysOfBoth(before.entries, after.entries)) {
    const old = own(before.entries, sheet) ?? {};
    const fresh = own(after.entries, sheet) ?? {};
    if (old === fresh) continue;
    for (const name of keysOfBoth(old, fresh)) {
      if (!sameEntry(own(old, name), own(fresh, name))) changed.push([sheet, name]);
    }
  }
  return changed;
}

export function sameEntry(a: Entry | undefined, b: Entry | undefined): boolean {
  return a?.text === b?.text && a?.unit === b?.unit && (a === undefined) === (b === undefined);
}

/** Names come from files: `constructor` must not find what every object has. */
export function own<T>(record: ByName<T>, name: string): T | undefined {
  return Object.hasOwn(record, name) ? record[name] : undefined;
}

function keysOfBoth(a: ByName<unknown>, b: ByName<unknown>): ReadonlySet<string> {
  return new Set([...Object.keys(a), ...Object.keys(b)]);
}

/** The records with one value set, two names deep; `undefined` takes it out, and what is left empty with it. */
export function withNested<T>(
  outer: ByName<ByName<T>>,
  sheet: string,
  name: string,
  value: T | undefined,
): ByName<ByName<T>> {
  const inner = withKey(own(outer, sheet) ?? {}, name, value);
  return withKey(outer, sheet, Object.keys(inner).length === 0 ? undefined : inner);
}

function withKey<T>(record: ByName<T>, name: string, value: T | undefined): ByName<T> {
  const kept = Object.entries(record).filter(([key]) => key !== name);
  return Object.fromEntries(value === undefined ? kept : [...kept, [name, value]]);
}
