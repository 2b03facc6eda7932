import type { Entry } from '../sheet/reading.ts';
import { type ByName, type Job, NEW_JOB } from './record.ts';

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
  const { schema, title, system, entries, ticks } = data;
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
  return {
    ok: true,
    job: { title: isText(title) ? title : NEW_JOB.title, system, entries, ticks },
  };
}

function fail(message: string): JobReading {
  return { ok: false, message };
}

function isRecord(data: unknown): data is ByName<unknown> {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
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
