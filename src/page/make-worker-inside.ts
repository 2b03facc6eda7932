import SpreadWorker from './spread-worker.ts?worker&inline';

/** The same in the one-file copy, where the worker's script is inside the page's own. */
export function makeSpreadWorker(): Worker {
  return new SpreadWorker();
}
