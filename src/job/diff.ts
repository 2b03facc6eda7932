import { isRecord } from './json.ts';
import type { ByName, Job } from './record.ts';

/** One value that differs between two jobs. Where a side is left out, that job has no such value. */
export interface Change {
  readonly path: readonly string[];
  readonly before?: unknown;
  readonly after?: unknown;
}

/** What has to change to make one job of another, value by value; a list is one value. */
export function diffJobs(before: Job, after: Job): readonly Change[] {
  return diff(before, after, []);
}

function diff(before: unknown, after: unknown, path: readonly string[]): readonly Change[] {
  if (before === after) return [];
  if (isRecord(before) && isRecord(after)) {
    const names = new Set([...Object.keys(before), ...Object.keys(after)]);
    return [...names].flatMap((name) => diff(own(before, name), own(after, name), [...path, name]));
  }
  if (JSON.stringify(before) === JSON.stringify(after)) return [];
  return [
    {
      path,
      ...(before === undefined ? {} : { before }),
      ...(after === undefined ? {} : { after }),
    },
  ];
}

/** The job as it is on one side of the changes. What they do not touch is shared, not copied. */
export function applyChanges(job: Job, changes: readonly Change[], side: 'before' | 'after'): Job {
  return changes.reduce<ByName<unknown>>(
    (changed, change) => put(changed, change.path, change[side]),
    job as unknown as ByName<unknown>,
  ) as unknown as Job;
}

function put(record: ByName<unknown>, path: readonly string[], value: unknown): ByName<unknown> {
  const [name, ...rest] = path;
  if (name === undefined) return record;
  const below = own(record, name);
  const inner = rest.length === 0 ? value : put(isRecord(below) ? below : {}, rest, value);
  const kept = Object.entries(record).filter(([key]) => key !== name);
  return Object.fromEntries(inner === undefined ? kept : [...kept, [name, inner]]);
}

function own(record: ByName<unknown>, name: string): unknown {
  return Object.hasOwn(record, name) ? record[name] : undefined;
}
