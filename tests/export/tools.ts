import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { DOMParser } from 'linkedom';
import type { BundleTools } from '../../src/export/bundle.ts';
import { createRasteriser } from '../../src/export/rasterise.ts';
import { FONT_PATHS, loadTypeface } from '../../src/export/tools.ts';

const { resolve } = createRequire(import.meta.url);

/** The bytes of a file of an installed package. */
export function readPackageFile(path: string): ArrayBuffer {
  const file = readFileSync(resolve(path));
  return file.buffer.slice(file.byteOffset, file.byteOffset + file.byteLength) as ArrayBuffer;
}

/** What the terminal draws figures with. */
export async function loadTestTools(): Promise<BundleTools> {
  const document = new DOMParser().parseFromString('<svg/>', 'image/svg+xml');
  return {
    document: document as unknown as Document,
    typeface: await loadTypeface(async (name) => readPackageFile(FONT_PATHS[name])),
    rasterise: await createRasteriser(async () =>
      readPackageFile('@resvg/resvg-wasm/index_bg.wasm'),
    ),
  };
}
