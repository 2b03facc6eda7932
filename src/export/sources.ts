import type { Book } from '../sheet/book.ts';
import type { Sheet } from '../sheet/sheet.ts';

/** Where a figure, a formula or a window of a sheet comes from. */
export interface SourceNote {
  readonly what: string;
  readonly source: string;
}

/** Every source that a sheet names, in its order, each once. */
export function listSources(book: Book, sheet: Sheet): readonly SourceNote[] {
  const cells = book.cellsOf(sheet.name).map(({ label, source }) => ({ what: label, source }));
  const checks = book.checks
    .filter((check) => check.sheet === sheet.name)
    .map(({ statement: { label, source } }) => ({ what: `Window: ${label}`, source }));
  return [...cells, ...checks].flatMap(({ what, source }) =>
    source === undefined ? [] : [{ what, source }],
  );
}
