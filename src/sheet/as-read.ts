import type { Value } from '../language/kind.ts';
import type { Cell } from './cell.ts';
import { originOf } from './origin.ts';
import type { Display } from './sheet.ts';

/** A reading has at most so many decimals; a mean of readings has more, and is rounded as the sheet says. */
const MOST_DECIMALS = 4;
const SLACK = 1e-9;

/**
 * Unit and digits for a value that was read, on its own sheet or carried to another: as fine as it
 * was read. A sheet asks for steps of 0.05 in; whoever reads 11.63 is not shown 11.65. What is
 * worked keeps the digits of the sheet.
 */
export function displayAsRead(
  book: { readonly cells: readonly Cell[] },
  cell: Cell,
  value: Value,
): Display {
  return originOf(book, cell)?.role === 'given' ? refine(cell.display, value) : cell.display;
}

function refine(display: Display, value: Value): Display {
  const { unit, resolution, fraction } = display;
  const step = resolution ?? (fraction === undefined ? undefined : 1 / fraction);
  const numbers = typeof value === 'number' ? [value] : value;
  if (step === undefined || !(Array.isArray(numbers) || numbers instanceof Float64Array))
    return display;
  const shown = Array.from(numbers as ArrayLike<number>, (one) => one / (unit?.factor ?? 1));
  const fits = (least: number) => shown.every((one) => isMultiple(one, least));
  if (fits(step)) return display;
  for (let decimals = 0; decimals <= MOST_DECIMALS; decimals += 1) {
    const finer = Number(`1e-${decimals}`);
    if (fits(finer)) return { ...(unit === undefined ? {} : { unit }), resolution: finer };
  }
  return display;
}

function isMultiple(value: number, step: number): boolean {
  const steps = value / step;
  return Math.abs(steps - Math.round(steps)) <= SLACK * Math.max(1, Math.abs(steps));
}
