import type { Value } from '../language/kind.ts';
import type { Problem } from '../language/problem.ts';
import type { Unit } from '../units/unit.ts';

/** What stands in a field: the text as typed, and the unit in which a bare number was meant. */
export interface Entry {
  readonly text: string;
  /** Symbol of the unit; the given's own where it is left out. */
  readonly unit?: string;
}

/** What was understood of an entry. */
export type Reading =
  | {
      readonly state: 'value';
      readonly value: Value;
      readonly unit?: Unit;
      /** True where the person typed a unit. */
      readonly explicit: boolean;
      /** SI. */
      readonly tolerance?: { readonly minus: number; readonly plus: number };
      /** SI, where several were typed. */
      readonly readings?: readonly number[];
      /** Key of the row that was picked from a table. */
      readonly row?: string;
    }
  | { readonly state: 'blank' }
  | { readonly state: 'failed'; readonly problem: Problem };
