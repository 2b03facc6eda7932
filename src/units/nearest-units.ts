import { quote, wordAt } from './characters.ts';
import { didYouMean, nearest } from './nearest.ts';
import { findUnit, SPELLINGS } from './unit-index.ts';

/** Symbols of the units whose spelling is most like `text`, best first, at most three. */
export function nearestUnits(text: string): readonly string[] {
  const symbols = nearest(text, SPELLINGS).map((spelling) => findUnit(spelling)!.symbol);
  return [...new Set(symbols)];
}

/** The sentence about a word that stands where a unit should: `no unit is called rmp; did you mean rpm?` */
export function unknownUnit(word: string): string {
  const near = wordAt(word, 0) === '' ? [] : nearestUnits(word);
  return `no unit is called ${quote(word)}${didYouMean(near)}`;
}
