import regular from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?inline';
import bold from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff?inline';
import symbols from '@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff?inline';
import type { FontFiles } from '../export/typeface.ts';

const FILES: Readonly<Record<keyof FontFiles, string>> = { regular, bold, symbols };

/** The font files of printed figures, from inside the one file. */
export async function readFont(name: keyof FontFiles): Promise<ArrayBuffer> {
  const text = FILES[name];
  const binary = atob(text.slice(text.indexOf(',') + 1));
  return Uint8Array.from(binary, (character) => character.charCodeAt(0)).buffer;
}

/** The one file has no worker for pixels: the browser's own canvas makes them. */
export function makePixelWorker(): Worker | undefined {
  return undefined;
}
