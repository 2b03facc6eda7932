import { expect, test } from 'vitest';
import { makePixelWorker, readFont } from '../../src/page/export-files.ts';

test('each font is a font file', async () => {
  for (const name of ['regular', 'bold', 'symbols'] as const) {
    // A WOFF file starts with this signature (W3C, WOFF File Format 1.0).
    const signature = new TextDecoder().decode((await readFont(name)).slice(0, 4));
    expect(signature).toBe('wOFF');
  }
});

test('pixels have a worker', () => {
  const worker = makePixelWorker();
  expect(worker).toBeInstanceOf(Worker);
  worker?.terminate();
});
