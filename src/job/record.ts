import type { Entry } from '../sheet/reading.ts';
import type { System } from '../units/unit.ts';

/** All that a person put into a job. What the sheets bring along is not part of it. */
export interface Job {
  readonly title: string;
  /** In which units the page shows results; what is entered stays as it was typed. */
  readonly system: System;
  /** What was typed, by sheet and by the name of the given. */
  readonly entries: ByName<ByName<Entry>>;
  /** Steps ticked off, by sheet and step; the value is the date, `2026-03-14`. */
  readonly ticks: ByName<ByName<string>>;
  /** Answers to practice questions, by sheet and question, the oldest first. */
  readonly attempts: ByName<ByName<readonly Attempt[]>>;
  /** Proposals beside the job, in the order in which they were made. */
  readonly variants: readonly Variant[];
}

/** A proposal: only what it has different. */
export interface Variant {
  readonly name: string;
  /** The variant that it builds on; the job itself where it is left out. */
  readonly base?: string;
  /** What was typed, by sheet and given; a bare number is in the given's own unit. */
  readonly entries: ByName<ByName<string>>;
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
  system: 'inch-pound',
  entries: {},
  ticks: {},
  attempts: {},
  variants: [],
};

/** What was typed for a given; undefined while the sheet's own example stands. */
export function entryIn(job: Job, sheet: string, name: string): Entry | undefined {
  return own(own(job.entries, sheet) ?? {}, name);
}

/** The day on which a step was ticked off. */
export function tickIn(job: Job, sheet: string, step: string): string | undefined {
  return own(own(job.ticks, sheet) ?? {}, step);
}

/** The job with one entry set; `undefined` takes it back to the sheet's example. */
export function withEntry(job: Job, sheet: string, name: string, entry: Entry | undefined): Job {
  return { ...job, entries: withNested(job.entries, sheet, name, entry) };
}

/** The job with one step ticked on a date; `undefined` unticks it. */
export function withTick(job: Job, sheet: string, step: string, date: string | undefined): Job {
  return { ...job, ticks: withNested(job.ticks, sheet, step, date) };
}

/** The job with one more answer to a practice question. */
export function withAttempt(job: Job, sheet: string, question: string, attempt: Attempt): Job {
  const before = own(own(job.attempts, sheet) ?? {}, question) ?? [];
  return { ...job, attempts: withNested(job.attempts, sheet, question, [...before, attempt]) };
}

export function withSystem(job: Job, system: System): Job {
  return { ...job, system };
}

/** True once a person has typed or ticked something on the sheet. */
export function isStarted(job: Job, sheet: string): boolean {
  return own(job.entries, sheet) !== undefined || own(job.ticks, sheet) !== undefined;
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
