import { expect, test } from 'vitest';
import { makeSpreadWorker } from '../../src/page/make-worker-inside.ts';

test('the worker from inside starts, and ends when it is told to', async () => {
  const worker = makeSpreadWorker();
  const failed = new Promise((resolve) =>
    worker.addEventListener('error', () => resolve('failed')),
  );
  const quiet = new Promise((resolve) => setTimeout(() => resolve('runs'), 300));
  expect(await Promise.race([failed, quiet])).toBe('runs');
  worker.terminate();
});
