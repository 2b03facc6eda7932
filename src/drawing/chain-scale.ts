import type { ChainTerm } from './chain-data.ts';

/** One term on the drawing: where it starts and ends, in px from the left. */
export interface ChainLink {
  readonly from: number;
  readonly to: number;
  /** False where the value is not known and the length is only assumed. */
  readonly known: boolean;
}

export interface ChainScale {
  /** Where the chain starts and the closing dimension with it. */
  readonly origin: number;
  readonly links: readonly ChainLink[];
  /** Where the last term ends. */
  readonly end: number;
}

/** Lays the terms end to end between `left` and `right`, plus to the right, all to one scale. */
export function createChainScale(
  terms: readonly ChainTerm[],
  left: number,
  right: number,
): ChainScale {
  const lengths = assumeLengths(terms);
  const stops = [0];
  for (const length of lengths) stops.push(stops.at(-1)! + length);
  const [low, high] = [Math.min(...stops), Math.max(...stops)];
  const scale = high > low ? (right - left) / (high - low) : 0;
  const place = (stop: number) => left + (stop - low) * scale;
  const links = terms.map((term, i) => ({
    from: place(stops[i]!),
    to: place(stops[i + 1]!),
    known: Number.isFinite(term.value),
  }));
  return { origin: place(0), links, end: place(stops.at(-1)!) };
}

/** Signed lengths; a term that is not known is drawn as long as the middle one of the others. */
function assumeLengths(terms: readonly ChainTerm[]): readonly number[] {
  const known = terms.map(({ value }) => Math.abs(value)).filter(Number.isFinite);
  const middle = known.sort((a, b) => a - b)[Math.floor(known.length / 2)] || 1;
  return terms.map(({ sign, value }) => sign * (Number.isFinite(value) ? value : middle));
}
