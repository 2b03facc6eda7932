import type { Entry } from '../sheet/reading.ts';
import { type Attempt, type ByName, type Job, NEW_JOB, type Variant } from './record.ts';

/** Version of the record as it is stored. */
export const SCHEMA = 1;

export type JobReading =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly message: string };

/** Text of a job to store: JSON with its schema's version. */
export function formatJob(job: Job): string {
  return JSON.stringify({ schema: SCHEMA, ...job });
}

/** A stored job, whole or not at all: half a job would be taken for the whole one. */
export function parseJob(text: string): JobReading {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return fail('The job saved in this browser was cut off or changed by hand');
  }
  if (!isRecord(data)) return fail('The job saved in this browser is not a job');
  const { schema, title, system, entries, ticks, attempts = {}, variants = [] } = data;
  if (typeof schema === 'number' && schema > SCHEMA) {
    return fail(
      `The job saved in this browser has version ${schema}; this page reads version ${SCHEMA} and older`,
    );
  }
  if (schema !== SCHEMA) return fail('The job saved in this browser does not tell its version');
  if (system !== 'inch-pound' && system !== 'metric')
    return fail('The job saved in this browser has an unknown system of units');
  if (!isNested(entries, isEntry))
    return fail('The job saved in this browser has entries that cannot be read');
  if (!isNested(ticks, isText))
    return fail('The job saved in this browser has ticked steps that cannot be read');
  if (!isNested(attempts, isAttempts))
    return fail('The job saved in this browser has practice answers that cannot be read');
  if (!Array.isArray(variants) || !variants.every(isVariant))
    return fail('The job saved in this browser has proposals that cannot be read');
  const name = isText(title) ? title : NEW_JOB.title;
  return { ok: true, job: { title: name, system, entries, ticks, attempts, variants } };
}

function fail(message: string): JobReading {
  return { ok: false, message };
}

function isRecord(data: unknown): data is ByName<unknown> {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}

function isAttempts(data: unknown): data is readonly Attempt[] {
  return Array.isArray(data) && data.every(isAttempt);
}

function isAttempt(data: unknown): data is Attempt {
  if (!isRecord(data)) return false;
  const { seed, typed, told, mistake = 0, seconds } = data;
  const numbers = [seed, mistake, seconds].every((number) => typeof number === 'number');
  return numbers && isText(typed) && isText(told);
}

function isVariant(data: unknown): data is Variant {
  if (!isRecord(data)) return false;
  const { name, base, entries } = data;
  return isText(name) && (base === undefined || isText(base)) && isNested(entries, isText);
}

function isText(data: unknown): data is string {
  return typeof data === 'string';
}

function isEntry(data: unknown): data is Entry {
  return isRecord(data) && isText(data.text) && (data.unit === undefined || isText(data.unit));
}

function isNested<T>(
  data: unknown,
  isLeaf: (leaf: unknown) => leaf is T,
): data is ByName<ByName<T>> {
  return (
    isRecord(data) &&
    Object.values(data).every((inner) => isRecord(inner) && Object.values(inner).every(isLeaf))
  );
}
