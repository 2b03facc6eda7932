import { expect, test } from 'vitest';
import { loadTestTools } from './tools.ts';

const { rasterise } = await loadTestTools();
const SVG =
  '<svg xmlns="http://www.w3.org/2000/svg" width="20mm" height="10mm" viewBox="0 0 2 1"><rect width="1" height="1" fill="#ff0000"/><rect x="1" width="1" height="1" fill="#0000ff"/></svg>';

test('a drawing comes to its pixels for its size and density', async () => {
  const { width, height, rgba } = await rasterise(SVG, 25.4, 100);
  expect([width, height]).toEqual([100, 50]);
  expect([...rgba.slice(0, 4)]).toEqual([255, 0, 0, 255]);
  expect([...rgba.slice(-4)]).toEqual([0, 0, 255, 255]);
});

test('the same drawing comes to the same pixels', async () => {
  expect(await rasterise(SVG, 20, 300)).toEqual(await rasterise(SVG, 20, 300));
});

test('what is no drawing is refused', () => {
  expect(() => rasterise('<svg', 20, 300)).toThrow();
});
