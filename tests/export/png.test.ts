import UPNG from 'upng-js';
import { describe, expect, test } from 'vitest';
import { encodePNG, type Pixels } from '../../src/export/png.ts';

/** A picture with a colour of its own at every place. */
function paint(width: number, height: number): Pixels {
  const rgba = Uint8Array.from({ length: 4 * width * height }, (_, i) =>
    i % 4 === 3 ? 255 : (i * 37 + (i >> 5)) & 255,
  );
  return { width, height, rgba };
}

const WORDS = { title: 'Gap ± 0.001', description: 'A chain of “dimensions”.' };

describe('a PNG as another program reads it', () => {
  test('has its size, eight bits a channel, and the same pixels', () => {
    const pixels = paint(31, 17);
    const png = encodePNG(pixels, { dotsPerInch: 300, colour: 'colour', ...WORDS });
    const image = UPNG.decode(png.buffer as ArrayBuffer);
    expect([image.width, image.height, image.depth, image.ctype]).toEqual([31, 17, 8, 2]);
    expect(new Uint8Array(UPNG.toRGBA8(image)[0]!)).toEqual(pixels.rgba);
  });

  test.each([
    [300, 11811],
    [600, 23622],
    [1000, 39370],
  ])('at %i dots per inch says %i dots per metre', (dotsPerInch, perMetre) => {
    const png = encodePNG(paint(2, 2), { dotsPerInch, colour: 'colour', ...WORDS });
    const { tabs } = UPNG.decode(png.buffer as ArrayBuffer);
    expect(tabs.pHYs).toEqual([perMetre, perMetre, 1]);
  });

  test('in grey has one channel', () => {
    const png = encodePNG(paint(3, 3), { dotsPerInch: 300, colour: 'grey', ...WORDS });
    const image = UPNG.decode(png.buffer as ArrayBuffer);
    expect([image.depth, image.ctype]).toEqual([8, 0]);
  });

  test('holds its title and what it shows', () => {
    const png = encodePNG(paint(2, 2), { dotsPerInch: 300, colour: 'colour', ...WORDS });
    const { tabs } = UPNG.decode(png.buffer as ArrayBuffer);
    expect(tabs.iTXt).toMatchObject({ Title: WORDS.title, Description: WORDS.description });
  });
});
