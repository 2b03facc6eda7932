import type { Unit } from './unit.ts';

/** Slack for a step that a conversion leaves a hair under a round one. */
const SLACK = 1 + 1e-9;

/**
 * The step of the last digit after a change of unit: the largest of 1 and 5 times a power of ten
 * that is no coarser than the given step, and never coarser than 1: a length of 46 in, read to the
 * inch, is 1168 mm and not 1170. 0.001 in gives 0.01 mm; the same unit keeps its step.
 */
export function convertResolution(resolution: number, from: Unit, to: Unit): number {
  if (from.factor === to.factor) return resolution;
  const step = Math.min(1, (resolution * from.factor) / to.factor);
  const exponent = Math.floor(Math.log10(step * SLACK));
  const five = Number(`5e${exponent}`);
  return five <= step * SLACK ? five : Number(`1e${exponent}`);
}
