import type { Book } from '../sheet/book.ts';
import type { Cell } from '../sheet/cell.ts';
import { didYouMean, nearest } from '../units/nearest.ts';

/** A value of the sheet by its name, or a sentence with names like it. */
export function nameResult(book: Book, sheet: string, name: string): Cell | string {
  const cell = book.find(sheet, name);
  if (cell?.kind !== undefined) return cell;
  if (cell !== undefined) return `${name} has an error of its own: ${cell.problem!.message}`;
  const names = book.cellsOf(sheet).map((each) => each.name);
  return `sheet ${sheet} has no "${name}"${didYouMean(nearest(name, names))}`;
}
