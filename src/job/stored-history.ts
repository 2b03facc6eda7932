import { applyChanges, type Change, diffJobs } from './diff.ts';
import type { History, Step } from './history.ts';
import type { Job } from './record.ts';

/** A step as it is stored: not two jobs but what differs between them. */
export interface StoredStep {
  readonly label: string;
  readonly changes: readonly Change[];
}

export interface StoredSteps {
  readonly past: readonly StoredStep[];
  readonly future: readonly StoredStep[];
}

/** So many states of a job are kept, the one that holds now not counted. */
export const MOST_STATES = 50;
/** Characters that the steps of a job may come to: a large job that is replaced again and again. */
export const MOST_ROOM = 4_000_000;

/** The steps on both sides of the job as it stands, the nearest first to be kept. */
export function storeSteps({ past, future }: History): StoredSteps {
  return { past: storeNearest(past), future: storeNearest(future) };
}

function storeNearest(steps: readonly Step[]): readonly StoredStep[] {
  const kept: StoredStep[] = [];
  let room = MOST_ROOM;
  for (const { label, before, after } of steps.slice(-MOST_STATES).reverse()) {
    const step = { label, changes: diffJobs(before, after) };
    room -= JSON.stringify(step).length;
    if (room < 0) break;
    kept.unshift(step);
  }
  return kept;
}

/** The history that led to a job, from what was stored of it. */
export function restoreHistory(job: Job, { past, future }: StoredSteps): History {
  return { job, past: restorePast(job, past), future: restoreFuture(job, future) };
}

function restorePast(job: Job, stored: readonly StoredStep[]): readonly Step[] {
  let after = job;
  const steps = stored.toReversed().map(({ label, changes }) => {
    const before = applyChanges(after, changes, 'before');
    const step: Step = { label, before, after };
    after = before;
    return step;
  });
  return steps.reverse();
}

function restoreFuture(job: Job, stored: readonly StoredStep[]): readonly Step[] {
  let before = job;
  const steps = stored.toReversed().map(({ label, changes }) => {
    const after = applyChanges(before, changes, 'after');
    const step: Step = { label, before, after };
    before = after;
    return step;
  });
  return steps.reverse();
}
