/** A word longer than this is no slip of the finger of any name here. */
const LONGEST = 40;
const MOST = 3;

/**
 * The words most like a mistyped one, best first, at most three: at most one slip (a letter
 * wrong, missing, too many, or two exchanged) for each three letters. Capitals count for little.
 */
export function nearest(word: string, words: Iterable<string>): readonly string[] {
  if (word.length === 0 || word.length > LONGEST) return [];
  const allowed = Math.max(1, Math.floor(word.length / 3));
  const found: { readonly candidate: string; readonly slips: number }[] = [];
  for (const candidate of new Set(words)) {
    if (Math.abs(candidate.length - word.length) > allowed) continue;
    const slips = countSlips(word.toLowerCase(), candidate.toLowerCase());
    // A word of one letter is one slip away from every other such word, which helps nobody.
    if (slips <= allowed && slips < candidate.length) found.push({ candidate, slips });
  }
  const strangeness = ({ candidate }: { candidate: string }) =>
    Math.abs(candidate.length - word.length);
  found.sort(
    (a, b) =>
      a.slips - b.slips || strangeness(a) - strangeness(b) || (a.candidate < b.candidate ? -1 : 1),
  );
  return found.slice(0, MOST).map(({ candidate }) => candidate);
}

/** Optimal string alignment distance: edits, and exchanges of neighbours. */
function countSlips(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let slips = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + same);
      const exchanged = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (exchanged) slips = Math.min(slips, before[j - 2]! + 1);
      row.push(slips);
    }
    before = last;
    last = row;
  }
  return last[b.length]!;
}

/** `; did you mean a, b or c?`, or `''` where nothing is near. */
export function didYouMean(names: readonly string[]): string {
  if (names.length === 0) return '';
  const last = names[names.length - 1]!;
  const others = names.slice(0, -1);
  return `; did you mean ${others.length === 0 ? last : `${others.join(', ')} or ${last}`}?`;
}
