import type { SmallShelf } from './shelf.ts';

/** What a window that was being closed had not saved yet. */
export interface Rescue {
  /** The revision that it would have followed. */
  readonly revision: number;
  /** The job as text. */
  readonly text: string;
}

const HEAD = 'layshaft/rescue/';

/**
 * Leaves word of a job as the page goes. On the shelf, which takes it at once: a database may be asked,
 * but the page is gone before it answers, and then it has not been asked.
 */
export function leaveRescue(shelf: SmallShelf, id: string, { revision, text }: Rescue): void {
  shelf.setItem(HEAD + id, `${revision} ${text}`);
}

export function findRescue(shelf: SmallShelf, id: string): Rescue | undefined {
  const [, revision, text] = /^(\d+) (.*)$/s.exec(shelf.getItem(HEAD + id) ?? '') ?? [];
  return text === undefined ? undefined : { revision: Number(revision), text };
}

export function clearRescue(shelf: SmallShelf, id: string): void {
  shelf.removeItem(HEAD + id);
}
