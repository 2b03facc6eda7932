import type { Cell } from '../sheet/cell.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { type Desk, findCell } from './desk.ts';

/**
 * What the elements of a list result are called: as the lines of a chart that draws it, else by the
 * one list of words on the sheet that is as long. Undefined where nothing names them.
 */
export function namesFor(desk: Desk, sheet: Sheet, cell: Cell): readonly string[] | undefined {
  const length = lengthOf(desk, cell);
  if (length === undefined) return undefined;
  const drawn = sheet.parts.flatMap((part) =>
    part.kind === 'chart' && part.chart?.results.some((result) => result.name === cell.name)
      ? (part.chart.lines?.name ?? [])
      : [],
  );
  const candidates = drawn.length > 0 ? drawn : wordLists(desk, sheet.name);
  const fitting = candidates
    .map((name) => textsOf(desk, findCell(desk, sheet.name, name)))
    .filter((texts) => texts?.length === length);
  return fitting.length === 1 || drawn.length > 0 ? fitting[0] : undefined;
}

function wordLists(desk: Desk, sheet: string): readonly string[] {
  return desk.book.cells
    .filter((cell) => cell.sheet === sheet && cell.kind?.type === 'texts')
    .map((cell) => cell.name);
}

function lengthOf(desk: Desk, cell: Cell): number | undefined {
  const outcome = desk.outcomeOf(cell.index);
  if (outcome.state !== 'value' || !(outcome.value instanceof Float64Array)) return undefined;
  return outcome.value.length;
}

function textsOf(desk: Desk, cell: Cell | undefined): readonly string[] | undefined {
  const outcome = cell && desk.outcomeOf(cell.index);
  if (cell?.kind?.type !== 'texts' || outcome?.state !== 'value') return undefined;
  return outcome.value as readonly string[];
}
