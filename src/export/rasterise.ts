import { initWasm, Resvg } from '@resvg/resvg-wasm';
import type { Pixels } from './png.ts';
import { pixelsAcross } from './print-size.ts';

/** Turns a stand-alone drawing whose lettering is outlined into pixels: the same ones everywhere. */
export type Rasterise = (svg: string, width: number, dotsPerInch: number) => Pixels;

let ready: Promise<void> | undefined;

/**
 * Makes the rasteriser ready, once.
 *
 * @param wasm the bytes of its WebAssembly module
 */
export async function createRasteriser(wasm: () => Promise<ArrayBuffer>): Promise<Rasterise> {
  ready ??= wasm().then((bytes) => initWasm(bytes));
  await ready;
  return (svg, width, dotsPerInch) => {
    const value = pixelsAcross(width, dotsPerInch);
    const drawn = new Resvg(svg, { fitTo: { mode: 'width', value } });
    const picture = drawn.render();
    const pixels = { width: picture.width, height: picture.height, rgba: picture.pixels.slice() };
    picture.free();
    drawn.free();
    return pixels;
  };
}
