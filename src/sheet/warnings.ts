import { listOutside } from '../language/outside.ts';
import type { Book } from './book.ts';
import type { Frame } from './frame.ts';

/**
 * Why a number, though it was worked out, is not to be trusted: a formula or a trade function is
 * used outside of what it is good for. Sentences; empty where all is well or there is no value.
 */
export function warningsOf(book: Book, frame: Frame, index: number): readonly string[] {
  const cell = book.cells[index]!;
  if ((cell.role !== 'work' && cell.role !== 'stack') || cell.formula === undefined) return [];
  const { tree, kinds } = cell.formula;
  const slotOf = (name: string) => book.find(cell.sheet, name)!.index;
  const outside = listOutside(tree, { functions: book.functions, kinds, slotOf }, frame.memory);
  return [...invalidity(cell, frame), ...outside];
}

function invalidity(cell: Book['cells'][number], { memory }: Frame): readonly string[] {
  if (cell.role !== 'work' || cell.valid === undefined) return [];
  const holds = cell.valid.code.run(memory);
  return holds === 0 ? [cell.statement.valid!.sentence] : [];
}
