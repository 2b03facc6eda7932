import { expect, test } from 'vitest';
import { startSimulation } from '../../src/page/run-simulation.ts';
import type { Distribution } from '../../src/sheet/spread/distribution.ts';
import { createTestDesk } from './test-desk.ts';

const SHEET = '# A\n```given\ngap = 3.00 ± 0.01 in\n```\n```work\ntwice = 2 * gap\n```\n';

function start(samples: number) {
  const { desk } = createTestDesk(SHEET);
  const seen = { progress: [] as number[], done: [] as Distribution[], stopped: 0 };
  const stop = startSimulation(
    desk.book,
    [],
    desk.book.find('10-sheet', 'twice')!.index,
    { samples, seed: 1, element: 0 },
    {
      onProgress: (share) => seen.progress.push(share),
      onDone: (distribution) => seen.done.push(distribution),
      onStopped() {
        seen.stopped += 1;
      },
    },
  );
  return { seen, stop };
}

test('a worker draws the samples, and the readings’ doubt is in them', async () => {
  const { seen } = start(20_000);
  await expect.poll(() => seen.done.length, { timeout: 20_000 }).toBe(1);
  const { samples, u, shortest } = seen.done[0]!;
  // Samples are drawn in blocks: there may be a few more.
  expect(samples).toBeGreaterThanOrEqual(20_000);
  // A tolerance is taken as even between its limits (GUM 4.3.7): 2 × 0.01 in / √3.
  expect(u / 0.0254).toBeCloseTo((2 * 0.01) / Math.sqrt(3), 3);
  expect(shortest[0] / 0.0254).toBeGreaterThan(5.97);
  expect(shortest[1] / 0.0254).toBeLessThan(6.03);
  expect(seen.stopped).toBe(0);
});

test('stopped, it says so and tells nothing afterwards', async () => {
  const { seen, stop } = start(5_000_000);
  stop();
  await new Promise((resolve) => setTimeout(resolve, 200));
  expect(seen).toEqual({ progress: [], done: [], stopped: 1 });
});
