import type { Book } from '../sheet/book.ts';
import type { Distribution } from '../sheet/spread/distribution.ts';
import { makeSpreadWorker } from './make-worker.ts';
import type { SimulationNews, SimulationOrder } from './spread-worker.ts';

/** How much is simulated. */
export type SimulationSize = Pick<SimulationOrder, 'samples' | 'seed' | 'element'>;

export interface SimulationWatch {
  onProgress(share: number): void;
  onDone(distribution: Distribution): void;
  onStopped(): void;
}

/** Starts a simulation in a worker of its own; the function that it gives stops it at once. */
export function startSimulation(
  book: Book,
  entries: SimulationOrder['entries'],
  result: number,
  size: SimulationSize,
  watch: SimulationWatch,
): () => void {
  const worker = makeSpreadWorker();
  const sheets = book.sheets.map(({ file, source }) => ({ file, source }));
  worker.addEventListener('message', ({ data }: MessageEvent<SimulationNews>) => {
    if (data.type === 'progress') watch.onProgress(data.share);
    else {
      worker.terminate();
      watch.onDone(data.distribution);
    }
  });
  worker.addEventListener('error', stop);
  worker.postMessage({ sheets, entries, result, ...size } satisfies SimulationOrder);

  function stop(): void {
    worker.terminate();
    watch.onStopped();
  }
  return stop;
}
