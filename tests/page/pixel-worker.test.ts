import { expect, test } from 'vitest';
import { makePixelWorker } from '../../src/page/export-files.ts';
import type { PixelAnswer, PixelOrder } from '../../src/page/pixel-worker.ts';

function ask(svg: string): Promise<PixelAnswer> {
  const worker = makePixelWorker()!;
  return new Promise((resolve) => {
    worker.addEventListener('message', ({ data }) => {
      worker.terminate();
      resolve(data);
    });
    worker.postMessage({ id: 7, svg, width: 25.4, dotsPerInch: 50 } satisfies PixelOrder);
  });
}

test('a drawing comes back as pixels, under its own number', async () => {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="1mm" height="1mm"/>';
  const answer = await ask(svg);
  expect(answer).toMatchObject({ id: 7, pixels: { width: 50, height: 50 } });
});

test('what is no drawing comes back as a fault', async () => {
  expect(await ask('<svg')).toMatchObject({ id: 7, fault: expect.any(String) });
});
