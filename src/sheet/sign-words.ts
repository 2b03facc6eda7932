import { displayStep } from './display-step.ts';
import type { Display, Signs } from './sheet.ts';

/**
 * What the sign of a result tells one to do. A result that rounds to nothing at the last digit
 * shown is told as zero: nobody turns a collar by what cannot be read.
 *
 * @param value SI
 */
export function signWords(signs: Signs, value: number, display: Display): string | undefined {
  const step = displayStep(display) ?? 0;
  if (Math.abs(value) < step / 2 || value === 0) return signs.zero;
  return value > 0 ? signs.positive : signs.negative;
}
