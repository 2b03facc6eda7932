import { expect, test } from 'vitest';
import type { Pixels } from '../../src/export/png.ts';
import { drawPixels, loadExport } from '../../src/page/load-export.ts';

const SVG =
  '<svg xmlns="http://www.w3.org/2000/svg" width="20mm" height="10mm" viewBox="0 0 2 1"><rect width="1" height="1" fill="#ff0000"/><rect x="1" width="1" height="1" fill="#0000ff"/></svg>';

test('what prints is brought once', () => {
  expect(loadExport()).toBe(loadExport());
});

test('worker and canvas come to the same size and colours', async () => {
  const { rasterise } = await loadExport();
  for (const pixels of [
    await rasterise(SVG, 25.4, 100),
    await drawPixels({ svg: SVG, width: 25.4, dotsPerInch: 100 }),
  ]) {
    expect([pixels.width, pixels.height]).toEqual([100, 50]);
    expect(at(pixels, 20, 20)).toEqual([255, 0, 0, 255]);
    expect(at(pixels, 80, 20)).toEqual([0, 0, 255, 255]);
    expect(at(pixels, 0, 0)[3]).toBe(255);
  }
});

function at({ width, rgba }: Pixels, x: number, y: number): readonly number[] {
  return [...rgba.slice(4 * (y * width + x), 4 * (y * width + x) + 4)];
}
