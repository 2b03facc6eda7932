import type { Value } from '../language/kind.ts';

/** The first number of a quantity or a list that a test holds for; undefined where it holds for none. */
export function someNumber(value: Value, test: (number: number) => boolean): number | undefined {
  const numbers = typeof value === 'number' ? [value] : (value as Float64Array);
  return Array.from(numbers).find(test);
}
