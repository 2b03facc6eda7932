import { fail, type Problem, type Span } from './problem.ts';

/** Where a reading ends and its tolerance stands. */
export interface ToleranceSplit {
  readonly nominal: Span;
  /** The same stretch for both where it was written with `±`. */
  readonly minus: Span;
  readonly plus: Span;
}

const BOTH = /±|\+\s*\/\s*[-−]|\+[-−]/g;

/** A drawing stacks the two sides, and a person types them in a row: `3.212 +0.05 -0.02 in`. */
const STACKED = /(?<=\S\s+)([-+−])[\d.]\S*\s+([-+−])[\d.]\S*(?=(?:\s+\p{L}\S*)?\s*$)/u;

/**
 * Finds a tolerance: `± 0.003`, `+- 0.003`, `+/- 0.003`, or unequal `+0.05/-0.02` in either order.
 * `3 +-2` and `6 +4/-2` are therefore read as tolerances and never as arithmetic. Undefined where
 * there is none.
 */
export function splitTolerance(entry: string): ToleranceSplit | Problem | undefined {
  const stacked = STACKED.exec(entry);
  if (stacked !== null && (stacked[1] === '+') !== (stacked[2] === '+')) {
    return refuseStacked(stacked);
  }
  const marks = [...entry.matchAll(BOTH)];
  const split = marks.length === 0 ? splitUnequal(entry) : splitAt(entry, marks[0]!);
  if (split === undefined) return undefined;
  const second = marks[1];
  if (second !== undefined) return refuse('one tolerance is enough', at(second));
  return findMissing(entry, split) ?? split;
}

function at(mark: RegExpMatchArray): Span {
  return { from: mark.index!, to: mark.index! + mark[0].length };
}

function refuseStacked(found: RegExpExecArray): Problem {
  const [first, second] = found[0].split(/\s+/);
  const span = { from: found.index, to: found.index + found[0].length };
  const message = `is ${first} ${second} a tolerance or a sum? write ${first}/${second} for a tolerance, and a blank behind each sign for a sum`;
  return fail('bad-tolerance', span, { message });
}

function splitAt(entry: string, mark: RegExpMatchArray): ToleranceSplit {
  const { from, to } = at(mark);
  const tolerance = { from: to, to: entry.length };
  return { nominal: { from: 0, to: from }, minus: tolerance, plus: tolerance };
}

/** The last `/` before a sign parts the two sides; the last sign before it begins the first side. */
function splitUnequal(entry: string): ToleranceSplit | undefined {
  const slash = [...entry.matchAll(/\/\s*[-+−]/g)].at(-1);
  if (slash === undefined) return undefined;
  const sign = findSignBefore(entry, slash.index);
  const secondPlus = slash[0].endsWith('+');
  if (sign < 0 || (entry[sign] === '+') === secondPlus) return undefined;
  const first = { from: sign + 1, to: slash.index };
  const second = { from: slash.index + slash[0].length, to: entry.length };
  const nominal = { from: 0, to: sign };
  return secondPlus
    ? { nominal, minus: first, plus: second }
    : { nominal, minus: second, plus: first };
}

/** Not the sign of an exponent (`1e-5`) nor a hyphen inside a unit (`lb-ft`). */
function findSignBefore(entry: string, end: number): number {
  for (let i = end - 1; i >= 0; i -= 1) {
    if (!/[-+−]/.test(entry[i]!)) continue;
    const inside = /[\d.][eE][-+−]\d$|\p{L}-\p{L}$/u.test(entry.slice(Math.max(i - 2, 0), i + 2));
    if (!inside) return i;
  }
  return -1;
}

function findMissing(entry: string, split: ToleranceSplit): Problem | undefined {
  const isEmpty = ({ from, to }: Span) => entry.slice(from, to).trim() === '';
  const whole = { from: 0, to: entry.length };
  if (isEmpty(split.nominal)) return refuse('a reading belongs before its tolerance', whole);
  if (isEmpty(split.minus) || isEmpty(split.plus)) {
    return refuse('a number belongs behind ±', whole);
  }
  return undefined;
}

function refuse(what: string, where: Span): Problem {
  return fail('bad-tolerance', where, { message: `${what}, as in 3.212 ± 0.003 in` });
}
