/** A chart worked out from a sheet. All numbers are in the units of their axes. */
export interface ChartData {
  readonly title: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly series: readonly Series[];
  readonly marks: readonly Mark[];
  /** Windows on the y axis. */
  readonly limits: readonly Limits[];
  /** The present value of what is swept. */
  readonly now: number | undefined;
}

export interface Axis {
  readonly label: string;
  /** Symbol of the display unit; empty for a plain number. */
  readonly unit: string;
  readonly from: number;
  readonly to: number;
}

/** One line. */
export interface Series {
  readonly label: string;
  /** In the order of x; NaN for y is a gap, two points at one x are a jump. */
  readonly points: readonly (readonly [x: number, y: number])[];
  /** y at the present x. */
  readonly now: number | undefined;
}

/** A value that deserves a line of its own across the chart. */
export interface Mark {
  readonly axis: 'x' | 'y';
  readonly value: number;
  readonly label: string;
}

export interface Limits {
  readonly least: number;
  readonly most: number;
  readonly label: string;
}
