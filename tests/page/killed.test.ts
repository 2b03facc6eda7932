import { expect, test } from 'vitest';
import { openDatabase } from '../../src/job/database.ts';
import { createStore } from '../../src/job/store.ts';
import { makeShelf } from '../job/made-shelf.ts';

interface Typed {
  readonly count: number;
  readonly at: number;
}

const KILLS = 100;
const AT_ONCE = 10;

/** Lets a tab type for a while, kills it, and tells what it had typed and what was kept. */
async function killOnce(name: string, id: string) {
  const worker = new Worker(new URL('./killed-worker.ts', import.meta.url), { type: 'module' });
  const typed: Typed[] = [];
  const begun = new Promise<void>((resolve) => {
    worker.addEventListener('message', ({ data }: MessageEvent<Typed>) => {
      typed.push(data);
      resolve();
    });
  });
  worker.postMessage({ name, id });
  await begun;
  await new Promise((resolve) => setTimeout(resolve, 20 + Math.random() * 2200));
  worker.terminate();
  const killedAt = Date.now();
  const store = createStore(
    (onGone) => openDatabase(onGone, name),
    makeShelf(),
    () => new Date(),
  );
  const loaded = await store.load(id);
  const kept =
    loaded.state === 'loaded' ? Number(loaded.history.job.entries['20-gearing']?.redline?.text) : 0;
  const steps = loaded.state === 'loaded' ? loaded.history.past.length : 0;
  return { typed, killedAt, kept, steps, state: loaded.state };
}

test(`of ${KILLS} tabs killed while typing none loses what is older than a second`, async () => {
  const name = `layshaft-killed-${Date.now()}`;
  const outcomes: Awaited<ReturnType<typeof killOnce>>[] = [];
  for (let i = 0; i < KILLS; i += AT_ONCE) {
    const batch = Array.from({ length: AT_ONCE }, (_, j) => killOnce(name, `job-${i + j}`));
    outcomes.push(...(await Promise.all(batch)));
  }
  for (const { typed, killedAt, kept, steps } of outcomes) {
    const old = typed.filter(({ at }) => at <= killedAt - 1000);
    expect(kept).toBeGreaterThanOrEqual(old.at(-1)?.count ?? 0);
    // What was kept is a state that was typed, whole, with the steps that led to it.
    expect(kept).toBeLessThanOrEqual(typed.at(-1)!.count + 5);
    expect(steps).toBe(Math.min(kept, 50));
  }
  expect(outcomes.filter(({ kept }) => kept > 10).length).toBeGreaterThan(KILLS / 4);
  indexedDB.deleteDatabase(name);
}, 180_000);
