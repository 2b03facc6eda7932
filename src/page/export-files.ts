import regular from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?url';
import bold from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff?url';
import symbols from '@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff?url';
import type { FontFiles } from '../export/typeface.ts';

const ADDRESSES: Readonly<Record<keyof FontFiles, string>> = { regular, bold, symbols };

/** The font files of printed figures, from beside the page. */
export async function readFont(name: keyof FontFiles): Promise<ArrayBuffer> {
  const response = await fetch(ADDRESSES[name]);
  if (!response.ok) throw new Error(`the font ${name} could not be read (${response.status})`);
  return response.arrayBuffer();
}

/** A worker that turns drawings into pixels. */
export function makePixelWorker(): Worker | undefined {
  return new Worker(new URL('./pixel-worker.ts', import.meta.url), { type: 'module' });
}
