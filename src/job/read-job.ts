import { formatSorted, isRecord, isShallow, isText } from './json.ts';
import { readLooseJSON } from './loose-json.ts';
import { migrate, SCHEMA } from './migrate.ts';
import {
  isAttempts,
  isCaption,
  isEntry,
  isForeignSheet,
  isTick,
  isVariant,
  type JobIssue,
  readFlat,
  readItems,
  readNested,
  readText,
} from './read-fields.ts';
import { type ByName, type Job, NEW_JOB } from './record.ts';
import { sha256 } from './sha256.ts';

export type JobReading =
  /** Issues: what was left out of the job, or is in doubt. None where all of it is there. */
  | { readonly ok: true; readonly job: Job; readonly issues: readonly JobIssue[] }
  | { readonly ok: false; readonly message: string };

const APP = 'layshaft';
const KNOWN: ReadonlySet<string> = new Set([...Object.keys(NEW_JOB), 'app', 'schema', 'check']);

/** A job as text to keep: JSON on one line, sorted, with its version. What is empty is left out. */
export function formatJob(job: Job): string {
  return formatSorted(dataOf(job));
}

/** A job as a file: the same in lines, with a check sum that tells a slip of a single letter. */
export function formatJobFile(job: Job): string {
  const data = dataOf(job);
  return `${formatSorted({ ...data, check: checkOf(data) }, 2)}\n`;
}

function dataOf({ others = {}, ...job }: Job): ByName<unknown> {
  const filled = Object.entries(job).filter(([name, value]) => name === 'title' || !isEmpty(value));
  return { ...others, ...Object.fromEntries(filled), app: APP, schema: SCHEMA };
}

function isEmpty(value: unknown): boolean {
  if (value === '') return true;
  return typeof value === 'object' && value !== null && Object.keys(value).length === 0;
}

function checkOf(data: ByName<unknown>): string {
  const { check: _, ...rest } = data;
  return sha256(formatSorted(rest)).slice(0, 16);
}

/** A job that was kept. What can be read of it is read; all that cannot is listed. */
export function parseJob(text: string): JobReading {
  return readJob(text, false);
}

/** The same for a file: one without its check sum, or with another, is read and told of. */
export function parseJobFile(text: string): JobReading {
  return readJob(text, true);
}

function readJob(text: string, checked: boolean): JobReading {
  const { data, issues } = readData(text);
  if (!isRecord(data)) return refuse('This is no job of Layshaft: it cannot be read at all');
  if (!isShallow(data.schema) || !looksLikeJob(data)) {
    return refuse('This is no job of Layshaft: it has neither a version nor anything entered');
  }
  const schema = data.schema ?? SCHEMA;
  if (data.schema === undefined) issues.push(issue('schema', 'is missing: read as the newest'));
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1) {
    return refuse(`This job does not tell its version: ${shorten(formatSorted(schema))}`);
  }
  if (schema > SCHEMA) {
    return refuse(
      `This job has version ${schema} and was written by a newer Layshaft; this one reads version ${SCHEMA} and older. It has been left as it is`,
    );
  }
  if (checked && schema >= 2 && issues.length === 0) issues.push(...judgeCheck(data));
  return { ok: true, job: readFields(migrate(data, schema), issues), issues };
}

function readData(text: string): { data: unknown; issues: JobIssue[] } {
  const bare = text.replace(/^\uFEFF/, '');
  try {
    return { data: JSON.parse(bare), issues: [] };
  } catch {
    const { value, faults } = readLooseJSON(bare);
    const issues = faults.map(({ line, message }) => issue(`line ${line}`, message));
    return { data: value, issues };
  }
}

function looksLikeJob(data: ByName<unknown>): boolean {
  return data.app === APP || typeof data.schema === 'number' || isRecord(data.entries);
}

function judgeCheck(data: ByName<unknown>): readonly JobIssue[] {
  if (data.check === undefined) {
    return [issue('check', 'is missing: a figure that was changed could not be told')];
  }
  if (isShallow(data) && data.check === checkOf(data)) return [];
  return [
    issue(
      'check',
      'does not match: something was changed after the file was written, by hand or by damage. Look the entries over',
    ),
  ];
}

/** Mutates `issues`. */
function readFields(data: ByName<unknown>, issues: JobIssue[]): Job {
  const others = readOthers(data, issues);
  return {
    title: readText(data.title, ['title'], NEW_JOB.title, issues),
    vehicle: readText(data.vehicle, ['vehicle'], '', issues),
    worker: readText(data.worker, ['worker'], '', issues),
    system: readSystem(data.system, issues),
    entries: readNested(data.entries, ['entries'], isEntry, issues),
    ticks: readNested(data.ticks, ['ticks'], isTick, issues),
    notes: readNested(data.notes, ['notes'], isText, issues),
    attempts: readNested(data.attempts, ['attempts'], isAttempts, issues),
    variants: readItems(data.variants, ['variants'], isVariant, issues),
    captions: readNested(data.captions, ['captions'], isCaption, issues),
    sheets: readFlat(data.sheets, ['sheets'], isText, issues),
    foreign: readFlat(data.foreign, ['foreign'], isForeignSheet, issues),
    ...(Object.keys(others).length === 0 ? {} : { others }),
  };
}

function readSystem(data: unknown, issues: JobIssue[]): Job['system'] {
  if (data === 'inch-pound' || data === 'metric') return data;
  if (data !== undefined) issues.push(issue('system', 'should be "inch-pound" or "metric"'));
  return NEW_JOB.system;
}

function readOthers(data: ByName<unknown>, issues: JobIssue[]): ByName<unknown> {
  const unknown = Object.entries(data).filter(([name]) => !KNOWN.has(name));
  const kept = unknown.filter(([name, value]) => {
    if (isShallow(value)) return true;
    issues.push(issue(name, 'is nested too deep to be kept'));
    return false;
  });
  return Object.fromEntries(kept);
}

function issue(name: string, message: string): JobIssue {
  return { path: [name], message };
}

function refuse(message: string): JobReading {
  return { ok: false, message };
}

function shorten(text: string): string {
  return text.length <= 40 ? text : `${text.slice(0, 40)}…`;
}

/** An issue as a line: `entries, 20-gearing, redline: cannot be read`. */
export function formatIssue({ path, message }: JobIssue): string {
  return `${path.map(shorten).join(', ')}: ${message}`;
}
