import type { Axis, Limits, Mark } from './chart-data.ts';

/** A map worked out from a sheet: one result over two values. All numbers are in the units of their axes. */
export interface MapData {
  readonly title: string;
  readonly x: Axis;
  readonly y: Axis;
  /** The result; its ends are the least and the largest on the map. */
  readonly z: Axis;
  /** Places on the two axes, evenly apart. */
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  /** The result, row by row from the lowest y, `xs.length` to a row; NaN where there is none. */
  readonly values: readonly number[];
  /** On the two axes. */
  readonly marks: readonly Mark[];
  /** Windows on the result. */
  readonly limits: readonly Limits[];
  /** The present point; undefined where one of the three has no value. */
  readonly now: { readonly x: number; readonly y: number; readonly z: number } | undefined;
}
