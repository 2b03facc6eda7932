import type { Job } from './record.ts';

/** A change that can be taken back, named for people: `finger reading 3.212 in to 3.221 in`. */
export interface Step {
  readonly label: string;
  readonly before: Job;
  readonly after: Job;
  /** Changes with the same mark, one after another, are one step: a drag of a slider. */
  readonly mark?: string;
}

/** One line of changes over entries, ticks and units. */
export interface History {
  readonly job: Job;
  readonly past: readonly Step[];
  /** Undone, the next to be redone last. */
  readonly future: readonly Step[];
}

/** Older steps are let go. */
export const MOST_STEPS = 500;

export function createHistory(job: Job): History {
  return { job, past: [], future: [] };
}

/**
 * The history with one more step. What had been undone can no longer be redone.
 * A step that carries the mark of the step before it is joined to that one.
 */
export function record(history: History, label: string, after: Job, mark?: string): History {
  if (after === history.job) return history;
  const last = history.past.at(-1);
  const joined = mark !== undefined && last?.mark === mark ? last : undefined;
  const before = joined?.before ?? history.job;
  const kept = joined === undefined ? history.past : history.past.slice(0, -1);
  const step: Step = { label, before, after, ...(mark === undefined ? {} : { mark }) };
  return { job: after, past: [...kept, step].slice(-MOST_STEPS), future: [] };
}

export function undo(history: History): History {
  const step = history.past.at(-1);
  if (step === undefined) return history;
  return {
    job: step.before,
    past: history.past.slice(0, -1),
    future: [...history.future, unmarked(step)],
  };
}

export function redo(history: History): History {
  const step = history.future.at(-1);
  if (step === undefined) return history;
  return { job: step.after, past: [...history.past, step], future: history.future.slice(0, -1) };
}

/** Once a step has been undone or let go of, nothing more is joined to it. */
export function unmarked(step: Step): Step {
  return { label: step.label, before: step.before, after: step.after };
}
