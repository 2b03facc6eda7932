import type { Cell } from '../sheet/cell.ts';
import type { Desk } from './desk.ts';
import { type Child, h } from './element.ts';
import { sheetHref } from './link.ts';
import type { MarginNote } from './margin.ts';
import { formatNumber } from './route.ts';

/** To which other sheets a value is carried on. */
export function carriedNotes(desk: Desk, cell: Cell): readonly MarginNote[] {
  const takers = desk.book.cells.filter(
    (other) => other.role === 'from' && other.origin === cell.index,
  );
  if (takers.length === 0) return [];
  const words = takers.flatMap((taker, i): Child[] => [
    i === 0 ? 'to ' : ', ',
    h('a', { href: sheetHref(taker.sheet, taker.name) }, titleOf(desk, taker.sheet)),
  ]);
  return [{ title: 'Carried on', words }];
}

/** A sheet by its number and title: `70 Release bearing`. */
export function titleOf(desk: Desk, name: string): string {
  const sheet = desk.book.sheets.find((one) => one.name === name);
  if (sheet === undefined) return name;
  return `${formatNumber(sheet.number)} ${sheet.title}`.trim();
}
