import type { DrawingData } from '../../src/drawing/declaration.ts';

/** Values by slot, as a sheet would bind them: in SI, or texts. */
export type Slots = Readonly<
  Record<string, number | readonly number[] | readonly string[] | undefined>
>;

/** What a drawing is made from, without a sheet. `units` says how a slot's numbers are shown. */
export function createData(
  title: string,
  slots: Slots,
  units: Readonly<Record<string, (value: number) => string>> = {},
): DrawingData {
  const text = (slot: string, value: number | string | undefined): string => {
    if (value === undefined) return '?';
    if (typeof value === 'string') return value;
    return units[slot]?.(value) ?? `${value}`;
  };
  return {
    title,
    number: (slot) => slots[slot] as number | undefined,
    list: (slot) => slots[slot] as readonly number[] | undefined,
    texts: (slot) => slots[slot] as readonly string[] | undefined,
    show(slot, i) {
      const value = slots[slot];
      if (typeof value === 'number' || value === undefined) return text(slot, value);
      return text(slot, i === undefined ? undefined : value[i]);
    },
    showAs: text,
  };
}
