import { type Details, PROBLEMS, type ProblemCode } from './problem-codes.ts';

/** A stretch of source text: offsets into the text that was read, `to` exclusive. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Where a problem stands, for people: lines and columns count from 1. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** An error or warning as a value. The message is a lower-case sentence that names the offender, both sides and the cure. */
export interface Problem extends Span {
  readonly code: ProblemCode;
  readonly message: string;
  /** Set once the text is known to be part of a file or an entry. */
  readonly place?: Place;
  /** Name of the cell that the problem belongs to. */
  readonly cell?: string;
  /** For code `waiting`: the name of the cell that is waited for. */
  readonly waitsFor?: string;
}

/**
 * The one door through which problems are made.
 *
 * @param where the text that is at fault; there is no default place
 * @param details what the sentence of this code is made from
 */
export function fail<C extends ProblemCode>(code: C, where: Span, details: Details<C>): Problem {
  const sentence = PROBLEMS[code] as (details: Details<C>) => string;
  return { code, message: sentence(details), from: where.from, to: where.to };
}
