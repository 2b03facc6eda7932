export type Weight = 400 | 700;

/**
 * Widths of characters in em, regular and bold, by class: the widest of each class of Atkinson
 * Hyperlegible Next with tabular figures, measured from the font in a browser. A class is never
 * narrower than its letters, so that what was laid out with it is not cut when it is drawn.
 */
const CLASSES: readonly (readonly [characters: string, regular: number, bold: number])[] = [
  ['\u202f\u2009', 0.15, 0.16],
  [" \u00a0!'.,:;|ijl·‘’`", 0.29, 0.32],
  ['"()[]{}-/\\frtI°²³¹_“”', 0.4, 0.48],
  ['*?cksvxyzJ–', 0.52, 0.57],
  ['abdeghnopquEFLP<>^~≈≤≥ß', 0.6, 0.63],
  ['ABCKRSTVXYZ0123456789+−=÷±×$Δ⁄', 0.65, 0.69],
  ['DGHNOQUw#&@…Ωπμµ', 0.78, 0.79],
  ['MWm%½¼¾⅛⅜⅝⅞—', 0.92, 0.97],
];

const WIDTHS = new Map(
  CLASSES.flatMap(([characters, regular, bold]) =>
    [...characters].map((character) => [character, { 400: regular, 700: bold }] as const),
  ),
);

const UNKNOWN = { 400: 1.05, 700: 1.1 } as const;
const COMBINING = /\p{Mark}/gu;

/** Estimated width in px of a line of text, never less than what is drawn. */
export function textWidth(text: string, size: number, weight: Weight = 400): number {
  let ems = 0;
  for (const character of text.normalize('NFD').replace(COMBINING, ''))
    ems += (WIDTHS.get(character) ?? UNKNOWN)[weight];
  return ems * size;
}
