import type { Cell } from './cell.ts';

/** These cells and all that they hang on. */
export function upstreamOf(
  cells: readonly Pick<Cell, 'inputs'>[],
  results: readonly number[],
): ReadonlySet<number> {
  const found = new Set(results);
  for (const index of found) for (const input of cells[index]!.inputs) found.add(input);
  return found;
}
