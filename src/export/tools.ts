import { createTypeface, type FontFiles, type Typeface } from './typeface.ts';

/** Files of the fonts of the drawings, below the folder of installed packages. */
export const FONT_PATHS = {
  regular:
    '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff',
  bold: '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff',
  symbols: '@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff',
} as const satisfies Readonly<Record<keyof FontFiles, string>>;

/** Reads the fonts and makes the typeface of all figures. */
export async function loadTypeface(
  read: (name: keyof FontFiles) => Promise<ArrayBuffer>,
): Promise<Typeface> {
  const [regular, bold, symbols] = await Promise.all([
    read('regular'),
    read('bold'),
    read('symbols'),
  ]);
  return createTypeface({ regular, bold, symbols });
}
