import { nearest } from './nearest.ts';
import { findUnit, SPELLINGS } from './unit-index.ts';

/** Symbols of the units whose spelling is most like `text`, best first, at most three. */
export function nearestUnits(text: string): readonly string[] {
  const symbols = nearest(text, SPELLINGS).map((spelling) => findUnit(spelling)!.symbol);
  return [...new Set(symbols)];
}
