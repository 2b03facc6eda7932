import type { Tokens } from 'marked';
import type { Book } from '../sheet/book.ts';
import type { GivenCell } from '../sheet/cell.ts';
import type { CautionBlock, GivenStatement, Sheet } from '../sheet/sheet.ts';

/** What is measured under one heading of a sheet. */
export interface ReadingGroup {
  /** Undefined above the first heading below the title. */
  readonly heading: string | undefined;
  readonly readings: readonly GivenCell[];
}

/**
 * What a sheet has to be measured, in the order in which it is measured: as it stands on the sheet. A given
 * that says how it is read, or between what, is a reading; any other is chosen, or comes off a label.
 */
export function listReadings(book: Book, sheet: Sheet): readonly ReadingGroup[] {
  const groups: { heading: string | undefined; readings: GivenCell[] }[] = [
    { heading: undefined, readings: [] },
  ];
  let isTitled = false;
  for (const part of sheet.parts) {
    if (part.kind === 'given') {
      groups
        .at(-1)!
        .readings.push(...part.statements.flatMap((one) => readingOf(book, sheet, one)));
    }
    if (part.kind !== 'narrative') continue;
    for (const token of part.tokens) {
      if (token.type !== 'heading') continue;
      if (isTitled) groups.push({ heading: (token as Tokens.Heading).text, readings: [] });
      isTitled = true;
    }
  }
  return groups.filter(({ readings }) => readings.length > 0);
}

/** The safety notes of a sheet, which go wherever its readings go. */
export function listCautions(sheet: Sheet): readonly CautionBlock[] {
  return sheet.parts.filter((part) => part.kind === 'caution');
}

function readingOf(book: Book, sheet: Sheet, statement: GivenStatement): readonly GivenCell[] {
  const cell = book.find(sheet.name, statement.name);
  if (cell?.role !== 'given' || cell.statement !== statement || cell.kind === undefined) return [];
  const isRead = statement.how !== undefined || statement.datum !== undefined;
  return isRead ? [cell] : [];
}
