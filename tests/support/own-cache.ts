import { rmSync } from 'node:fs';

/** Where this run, and no other, prepares the dependencies of the browser tests. */
export const OWN_CACHE = `node_modules/.vite/tests-${process.pid}`;

/** Vitest calls this before and what it returns after the browser tests. */
export function setup(): () => void {
  return () => rmSync(OWN_CACHE, { recursive: true, force: true });
}
