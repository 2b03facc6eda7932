import { join } from 'node:path';
import { type Book, linkBook } from '../sheet/book.ts';
import { readSheet } from '../sheet/read-sheet.ts';
import type { Sheet } from '../sheet/sheet.ts';
import type { SheetFile } from './find-sheet.ts';
import type { Terminal } from './terminal.ts';

/** A sheet with all that it needs, linked. */
export interface Loaded {
  readonly book: Book;
  /** The sheet that was asked for. */
  readonly sheet: Sheet;
}

/**
 * Links a sheet with those that it carries values or figures from, and those that they carry values from in
 * turn; each is looked for in the folder of the first. One that is not there is left to the linking,
 * which says where it was named.
 */
export function loadBook(terminal: Terminal, file: SheetFile): Loaded {
  const sheet = readSheet(file.text, file.path);
  const sheets = new Map([[sheet.name, sheet]]);
  for (const each of sheets.values()) addOrigins(terminal, file.folder, each, sheets);
  return { book: linkBook([...sheets.values()]), sheet };
}

/** Mutates `sheets`: adds those that this one names and that are not there yet. */
function addOrigins(
  terminal: Terminal,
  folder: string,
  sheet: Sheet,
  sheets: Map<string, Sheet>,
): void {
  for (const name of listOrigins(sheet)) {
    if (sheets.has(name)) continue;
    const path = join(folder, `${name}.md`);
    const text = terminal.readText(path);
    if (text !== undefined) sheets.set(name, readSheet(text, path));
  }
}

function listOrigins(sheet: Sheet): readonly string[] {
  return sheet.parts.flatMap((part) => {
    if (part.kind === 'from') return [part.sheet];
    if (part.kind !== 'figures') return [];
    return (part.figures?.figures ?? []).flatMap((figure) => figure.sheet?.name ?? []);
  });
}
