import type { Spread } from './spread.ts';
import type { Confidence } from './verdict-under-doubt.ts';

export interface SpreadWriting {
  /** A value or a difference with its unit. */
  show(value: number): string;
  /** What a given is called: "finger reading". */
  name(cell: number): string;
}

/** How sure a result is, in one line: worst case and likely range. */
export function describeSpread(spread: Spread, writing: SpreadWriting): string {
  const show = (value: number) => writing.show(value);
  const known = spread.worst.gap ? ' where it has a value at all' : '';
  const worst = `worst case ${describeRange(spread.value, spread.worst, show)}${known}`;
  const searched =
    spread.worst.method === 'search' ? ' (searched for, since it turns on the way)' : '';
  if (!spread.straight)
    return `${worst}${searched}; it bends too much for a likely range: simulate it`;
  return `${worst}${searched} · likely ${describeRange(spread.value, spread.likely, show)}`;
}

/** `± 0.006 in` where both sides are alike, else both ends. */
export function describeRange(
  value: number,
  { from, to }: { readonly from: number; readonly to: number },
  show: (value: number) => string,
): string {
  const [below, above] = [value - from, to - value];
  const alike = Math.abs(below - above) <= 0.02 * Math.max(Math.abs(below), Math.abs(above));
  if (alike) return `± ${show((below + above) / 2)}`;
  // An end that comes to next to nothing is nought: the search for it stops a hair beside.
  const end = (at: number) => show(Math.abs(at) < NEXT_TO_NOTHING * (to - from) ? 0 : at);
  return `${end(from)} to ${end(to)}`;
}

const NEXT_TO_NOTHING = 1e-3;

const FRACTIONS: readonly (readonly [number, string])[] = [
  [0.995, 'All'],
  [0.85, 'Nine tenths'],
  [0.7, 'Three quarters'],
  [0.6, 'Two thirds'],
  [0.45, 'Half'],
  [0.3, 'A third'],
  [0.2, 'A quarter'],
  [0, 'A small part'],
];

/** Which given matters most, and what halving its doubt would do. */
export function describeShares(
  { shares, likely, straight }: Spread,
  { show, name }: SpreadWriting,
): string {
  const [first, second] = shares;
  if (first === undefined || !straight) return '';
  const part = FRACTIONS.find(([least]) => first.share >= least)![1];
  const equal =
    second !== undefined && first.share - second.share < 0.02 && first.share + second.share > 0.9;
  const whose = equal
    ? `${name(first.cell)} and ${name(second.cell)} share the doubt equally`
    : `${part} of the doubt is ${name(first.cell)}`;
  const half = (likely.to - likely.from) / 2;
  const left = half * Math.sqrt(1 - 0.75 * first.share);
  return `${whose.charAt(0).toUpperCase()}${whose.slice(1)}; halve ${equal ? 'one of them' : 'it'} and the result is sure to ± ${show(left)}.`;
}

/** What a check says under doubt. */
export function describeConfidence({ verdict, inside }: Confidence): string {
  const percent = Math.min(99.9, Math.round(1000 * inside) / 10);
  switch (verdict) {
    case 'surely-pass':
      return 'Inside whatever the readings are within their tolerance.';
    case 'likely-pass':
      return `Likely inside (${percent} %), though not in the worst case.`;
    case 'cannot-tell':
      if (Number.isNaN(inside))
        return 'Cannot be told: within the doubt of the readings it bends, jumps or has no value.';
      return `Cannot be told with this measuring: inside with a probability of ${percent} %.`;
    case 'likely-fail':
      return `Likely outside (inside with only ${percent} %).`;
    case 'surely-fail':
      return 'Outside whatever the readings are within their tolerance.';
    default:
      return verdict satisfies never;
  }
}
