/** The worker that simulates, from the file that it is built into. */
export function makeSpreadWorker(): Worker {
  return new Worker(new URL('./spread-worker.ts', import.meta.url), { type: 'module' });
}
