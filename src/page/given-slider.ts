import type { GivenCell } from '../sheet/cell.ts';
import { convertResolution } from '../units/convert-resolution.ts';
import { formatQuantity } from '../units/format-quantity.ts';
import type { Unit } from '../units/unit.ts';
import type { Desk } from './desk.ts';
import { unitOfField } from './given-field.ts';
import { createSlider, type Scale } from './slider.ts';

export interface GivenSlider {
  readonly element: HTMLElement;
  refresh(): void;
}

/** Without a declared step the scale has so many. */
const STEPS = 100;

let drags = 0;

/** The slider of a given that has a range; undefined for one that has none. */
export function createGivenSlider(desk: Desk, cell: GivenCell): GivenSlider | undefined {
  const { range } = cell;
  if (range === undefined || cell.kind?.type !== 'quantity') return undefined;
  let mark: string | undefined;
  const slider = createSlider({
    label: cell.label,
    move(value) {
      mark ??= `drag ${++drags}`;
      const unit = unitOfField(desk, cell);
      const text = formatStep(value, readScale(desk, cell, range).step);
      desk.enter(cell, unit === undefined ? { text } : { text, unit: unit.symbol }, mark);
    },
    settle() {
      mark = undefined;
    },
  });

  function refresh(): void {
    const unit = unitOfField(desk, cell);
    const reading = desk.readingOf(cell);
    const value = reading.state === 'value' ? (reading.value as number) : undefined;
    const text = value === undefined ? 'no value' : formatQuantity(value, unit);
    slider.show(readScale(desk, cell, range!), value && value / factorOf(unit), text);
  }

  return { element: slider.element, refresh };
}

/** The range in the unit of the field. */
function readScale(desk: Desk, cell: GivenCell, range: { from: number; to: number }): Scale {
  const unit = unitOfField(desk, cell);
  const [from, to] = [tidy(range.from / factorOf(unit)), tidy(range.to / factorOf(unit))];
  return { from, to, step: stepOf(cell, unit) ?? tidy((to - from) / STEPS) };
}

function stepOf(cell: GivenCell, unit: Unit | undefined): number | undefined {
  const { resolution, unit: declared } = cell.display;
  if (resolution === undefined || declared === undefined || unit === undefined) return resolution;
  return convertResolution(resolution, declared, unit);
}

function factorOf(unit: Unit | undefined): number {
  return unit?.factor ?? 1;
}

function tidy(value: number): number {
  return Number(value.toPrecision(12));
}

/** As a person would type it: with as many decimals as the step has. */
export function formatStep(value: number, step: number): string {
  const [mantissa, power] = String(step).split('e');
  const decimals = (mantissa!.split('.')[1]?.length ?? 0) - Number(power ?? 0);
  return value.toFixed(Math.min(Math.max(decimals, 0), 20));
}
