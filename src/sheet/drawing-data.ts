import type { DrawingData } from '../drawing/declaration.ts';
import { isThere } from '../language/compile-call.ts';
import type { Value } from '../language/kind.ts';
import type { System } from '../units/unit.ts';
import type { DrawnSlot, Formula, LinkedDrawing } from './cell.ts';
import { showValue } from './show.ts';

/**
 * The values that a drawing is bound to, with their texts in the units of the page.
 *
 * @param workOut gives the present value of a formula
 */
export function createDrawingData(
  title: string,
  { slots }: LinkedDrawing,
  workOut: (formula: Formula) => Value | undefined,
  system?: System,
): DrawingData {
  const bound = new Map(slots.map((slot) => [slot.slot.name, slot]));
  const values = new Map(slots.map(({ slot, formula }) => [slot.name, workOut(formula)]));
  const value = (slot: string): Value | undefined =>
    isThere(values.get(slot)) ? values.get(slot) : undefined;
  const text = ({ formula, display }: DrawnSlot, shown: Value) =>
    showValue(shown, formula.kind, display, system).text;
  return {
    title,
    number: (slot) => value(slot) as number | undefined,
    list: (slot) => {
      const list = value(slot) as Float64Array | undefined;
      return list === undefined ? undefined : Array.from(list);
    },
    texts: (slot) => value(slot) as readonly string[] | undefined,
    show(slot, i) {
      const whole = value(slot);
      const shown =
        i === undefined ? whole : (whole as Float64Array | readonly string[] | undefined)?.[i];
      const drawn = bound.get(slot);
      return shown === undefined || drawn === undefined ? '?' : text(drawn, shown);
    },
    showAs(slot, shown) {
      const drawn = bound.get(slot);
      return drawn === undefined ? '?' : text(drawn, shown);
    },
  };
}
