import type { Cell } from '../sheet/cell.ts';
import { elementNames } from '../sheet/element-names.ts';
import type { Desk } from './desk.ts';

/** What the elements of a list result are called, as the values stand. */
export function namesFor(desk: Desk, cell: Cell): readonly string[] | undefined {
  return elementNames(desk.book, desk.frame(), cell);
}
