import type { QuantityList } from './kind.ts';
import type { Memory } from './memory.ts';

/** Gives a quantity in SI, or a truth as 1 or 0; NaN where there is no value. */
export type NumberRun = (memory: Memory) => number;
export type ListRun = (memory: Memory) => QuantityList | undefined;
export type OtherRun = (memory: Memory) => unknown;

export interface NumberCode {
  readonly type: 'number';
  readonly run: NumberRun;
  /** Set where the number simply stands at this place of the memory. */
  readonly slot?: number;
}

/** A formula ready to run. It never throws: no value is NaN or undefined. */
export type Code =
  | NumberCode
  | {
      readonly type: 'list';
      readonly run: ListRun;
      /** True where each run gives a new list: whoever asked for it may write into it. */
      readonly fresh: boolean;
    }
  | { readonly type: 'other'; readonly run: OtherRun };

export const numberCode = (run: NumberRun): Code => ({ type: 'number', run });
/** Code for the number that stands at a place of the memory. */
export const slotCode = (slot: number): Code => ({
  type: 'number',
  run: (memory) => memory.numbers[slot]!,
  slot,
});
export const listCode = (run: ListRun, fresh = false): Code => ({ type: 'list', run, fresh });
/** Code for the list that stands at a place of the memory. */
export const listSlotCode = (slot: number): Code =>
  listCode((memory) => memory.others[slot] as QuantityList | undefined);
/** Code for one and the same list. */
export const constantList = (list: QuantityList): Code => listCode(() => list);
export const otherCode = (run: OtherRun): Code => ({ type: 'other', run });

/** The number itself, or NaN for an infinity: an overflow must not vanish in a later division. */
export function finite(x: number): number {
  return x - x === 0 ? x : Number.NaN;
}
