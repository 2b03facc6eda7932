import type { SmallShelf } from '../../src/job/shelf.ts';

/** A shelf with nothing on it yet. */
export function makeShelf(): SmallShelf {
  const kept = new Map<string, string>();
  return {
    getItem: (name) => kept.get(name) ?? null,
    setItem: (name, value) => void kept.set(name, value),
    removeItem: (name) => void kept.delete(name),
  };
}
