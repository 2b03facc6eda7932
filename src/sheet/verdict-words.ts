import { isShut, type Verdict } from './verdict.ts';

/** How the numbers of a verdict are written. */
export interface VerdictWriting {
  /** A quantity with its unit. */
  show(value: number): string;
  /** What one of several values is called: `3rd`. */
  name(place: number): string | undefined;
}

/** A verdict as a sentence: where the value stands, and how far from which limit. */
export function describeVerdict(verdict: Verdict, writing: VerdictWriting): string {
  if (verdict.verdict === 'unknown') return 'Cannot be told yet.';
  // Words are compared as a whole: the two are the same or they are not.
  if (verdict.values.length === 0)
    return verdict.verdict === 'pass' ? 'The same.' : 'Not the same.';
  if (isShut(verdict))
    return `Nothing can pass: the least allowed, ${writing.show(verdict.least)}, is more than the most, ${writing.show(verdict.most)}.`;
  const value = verdict.values[verdict.worst]!;
  const name = verdict.values.length > 1 ? writing.name(verdict.worst) : undefined;
  const which = name === undefined ? '' : `${name}: `;
  if (verdict.verdict === 'fail' && verdict.least === verdict.most) {
    const relation = verdict.side === 'below' ? 'less' : 'more';
    return `Not the same: ${which}${writing.show(value)} is ${writing.show(verdict.margin)} ${relation} than ${writing.show(verdict.least!)}.`;
  }
  if (verdict.verdict === 'fail') {
    const limit = verdict.side === 'below' ? verdict.least! : verdict.most!;
    const relation = verdict.side === 'below' ? 'less than the least' : 'more than the most';
    const shown = writing.show(value);
    return `${which}${shown} is ${writing.show(verdict.margin)} ${relation} allowed, ${writing.show(limit)}.`;
  }
  return describePass(verdict, which, writing);
}

function describePass(
  { margin, least, most }: Extract<Verdict, { verdict: 'pass' }>,
  which: string,
  { show }: VerdictWriting,
): string {
  if (least !== undefined && least === most) return `The same: ${which}${show(least)}.`;
  if (least !== undefined && most !== undefined) {
    return `Inside the window. ${which}${show(margin)} to the nearer limit.`;
  }
  return least !== undefined
    ? `Enough. ${which}${show(margin)} to spare above ${show(least)}.`
    : `Not too much. ${which}${show(margin)} to spare below ${show(most!)}.`;
}
