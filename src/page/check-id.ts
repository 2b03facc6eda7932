import type { Check } from '../sheet/cell.ts';

/** Where a check stands on the page of its sheet; a link leads there. */
export function checkId({ statement }: Pick<Check, 'statement'>): string {
  return `check-${statement.place.line}`;
}
