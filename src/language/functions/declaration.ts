import type { Dimension } from '../../units/dimension.ts';
import type { Value } from '../kind.ts';

/**
 * A letter stands for any dimension; the same letter twice means the same dimension both times.
 */
export type Letter = 'a' | 'b';

/** Dimensions that the letters of a declaration stand for in one call. */
export type Bound = Readonly<Partial<Record<Letter, Dimension>>>;

export interface Parameter {
  readonly name: string;
  /**
   * `quantity` one number; `list` numbers; `either` one of the two; `sequence` a list of
   * numbers or of texts; `text` a text.
   */
  readonly shape: 'quantity' | 'list' | 'either' | 'sequence' | 'text';
  /** For numbers; without it the dimension is a plain number. */
  readonly dimension?: Dimension | Letter;
  /** SI value taken when it is not given; its letter then stands for plain numbers. */
  readonly fallback?: number;
  readonly doc: string;
}

export interface Result {
  /**
   * `quantity`, `list`, `texts` as they say; `lifted`: a list where an `either` was given a list,
   * else a quantity; `element` and `sequence`: of the first parameter's sequence.
   */
  readonly shape: 'quantity' | 'list' | 'texts' | 'lifted' | 'element' | 'sequence';
  readonly dimension?: Dimension | Letter | ((bound: Bound) => Dimension);
}

/** A function of the sheet language. The checker, the compiler, the help and the tests read this. */
export interface FunctionDeclaration {
  readonly name: string;
  /** What it gives, in one sentence. */
  readonly doc: string;
  readonly parameters: readonly Parameter[];
  /** The last parameter may be given several times. */
  readonly several?: boolean;
  readonly result: Result;
  readonly work: Work;
  /** Source text and the value that it gives, both in the sheet language; run as a test. */
  readonly example: readonly [source: string, value: string];
  /** Where the formula comes from; trade formulas have one. */
  readonly source?: string;
  /** What the formula is good for, in words. */
  readonly validity?: string;
  /** Why a value, though there is one, lies outside of what the formula is good for. Gets SI values in the order of the parameters. */
  readonly outside?: (...values: Value[]) => string | undefined;
}

/** How a function is worked on SI values. */
export type Work =
  /** Element by element: numbers in, a number out; NaN where it has no value. */
  | {
      readonly type: 'each';
      readonly run: (...numbers: number[]) => number;
      /** Why there is no value for these numbers; asked before `run`. */
      readonly refuse: (...numbers: number[]) => string | undefined;
    }
  /**
   * On whole values, in the order of the parameters. A list that comes back is a new one and never
   * one that was handed in.
   */
  | {
      readonly type: 'whole';
      readonly run: (...values: Value[]) => Value;
      /** Why there is no value; asked before `run`. */
      readonly refuse: (...values: Value[]) => string | undefined;
    };

/** For functions that have a value everywhere. */
export const never = (): undefined => undefined;
