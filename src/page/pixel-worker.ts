import wasm from '@resvg/resvg-wasm/index_bg.wasm?url';
import type { Pixels } from '../export/png.ts';
import { createRasteriser } from '../export/rasterise.ts';

/** A drawing to be turned into pixels. */
export interface PixelOrder {
  readonly id: number;
  readonly svg: string;
  /** Millimetres. */
  readonly width: number;
  readonly dotsPerInch: number;
}

export type PixelAnswer =
  | { readonly id: number; readonly pixels: Pixels }
  | { readonly id: number; readonly fault: string };

const rasteriser = createRasteriser(async () => (await fetch(wasm)).arrayBuffer());

self.addEventListener('message', async ({ data }: MessageEvent<PixelOrder>) => {
  self.postMessage(await answer(data));
});

async function answer({ id, svg, width, dotsPerInch }: PixelOrder): Promise<PixelAnswer> {
  try {
    return { id, pixels: (await rasteriser)(svg, width, dotsPerInch) };
  } catch (error) {
    return { id, fault: error instanceof Error ? error.message : String(error) };
  }
}
