import { textWidth, type Weight } from './text-width.ts';

/**
 * Breaks a text into lines no wider than `width` px, at blanks; a word wider than that is broken
 * inside. No-break spaces hold. An empty text has no lines.
 */
export function wrapText(
  text: string,
  width: number,
  size: number,
  weight: Weight = 400,
): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(/[ \t\n]+/).filter(Boolean))
    addWord(lines, word, (line) => textWidth(line, size, weight) <= width);
  return lines;
}

/** Mutates `lines`. */
function addWord(lines: string[], word: string, fits: (line: string) => boolean): void {
  const last = lines.at(-1);
  if (last !== undefined && fits(`${last} ${word}`)) lines[lines.length - 1] = `${last} ${word}`;
  else lines.push(...breakWord(word, fits));
}

function breakWord(word: string, fits: (line: string) => boolean): readonly string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const character of word) {
    if (piece !== '' && !fits(piece + character)) {
      pieces.push(piece);
      piece = '';
    }
    piece += character;
  }
  return [...pieces, piece];
}

/** Width in px of the widest line. */
export function widestLine(lines: readonly string[], size: number, weight: Weight = 400): number {
  return Math.max(0, ...lines.map((line) => textWidth(line, size, weight)));
}
