import { createLettering, type Lettering, LINE, lettersHeight } from './lettering.ts';
import type { Pen } from './svg.ts';
import { wrapText } from './wrap-text.ts';

/** A line of the key to a drawing: a mark as in the drawing, and what it stands for. */
export interface KeyEntry {
  /** Draws the mark around a point, within 11 px of it to either side. */
  readonly mark?: (x: number, y: number) => readonly SVGElement[];
  readonly text: string;
}

export interface PlacedKey {
  readonly rows: readonly KeyRow[];
  /** Foot of the last line, in px. */
  readonly foot: number;
}

interface KeyRow {
  readonly entry: KeyEntry;
  readonly letters: Lettering;
}

export const KEY_SIZE = 13;
/** Room for a mark and the gap behind it. */
const MARK = 30;
const BETWEEN = 3;

/** Lays the entries below one another from `top`, wrapped to `width`. */
export function layOutKey(
  entries: readonly KeyEntry[],
  x: number,
  top: number,
  width: number,
): PlacedKey {
  const rows: KeyRow[] = [];
  let foot = top;
  for (const entry of entries) {
    const indent = entry.mark === undefined ? 0 : MARK;
    const lines = wrapText(entry.text, width - indent - 2, KEY_SIZE);
    const letters = { lines, x: x + indent, top: foot, anchor: 'start', size: KEY_SIZE } as const;
    rows.push({ entry, letters });
    foot += lettersHeight(lines, KEY_SIZE) + BETWEEN;
  }
  return { rows, foot };
}

export function drawKey(pen: Pen, { rows }: PlacedKey): readonly SVGElement[] {
  return rows.flatMap(({ entry, letters }) => [
    ...(entry.mark?.(letters.x - MARK / 2 - 3, letters.top + (KEY_SIZE * LINE) / 2) ?? []),
    ...createLettering(pen, letters),
  ]);
}
