import type { Dimension } from './dimension.ts';

export type System = 'inch-pound' | 'metric';

/** A unit or a compound of units, ready to convert with: SI value = number × factor. */
export interface Unit {
  /** Canonical spelling: `in`, `lbf·ft`, `kg/m^3`. */
  readonly symbol: string;
  /** SI value of one such unit. */
  readonly factor: number;
  readonly dimension: Dimension;
  /** `common` serves both systems: s, rev, deg, %. */
  readonly system: System | 'common';
}
