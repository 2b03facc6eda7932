import { join } from 'node:path';
import type { Job } from '../job/record.ts';
import { type Book, linkBook } from '../sheet/book.ts';
import { readSheet } from '../sheet/read-sheet.ts';
import { listSheets } from './find-sheet.ts';
import type { Terminal } from './terminal.ts';

/** All sheets that a job is about: those of the house and those from outside that it brings along. */
export function loadAll(terminal: Terminal, { foreign }: Job): Book {
  const house = listSheets(terminal).flatMap((name) => {
    const paths = terminal.sheetFolders.map((folder) => join(folder, `${name}.md`));
    const path = paths.find((one) => terminal.readText(one) !== undefined);
    return path === undefined ? [] : [readSheet(terminal.readText(path)!, path)];
  });
  const names = new Set(house.map(({ name }) => name));
  const own = Object.entries(foreign)
    .filter(([name]) => !names.has(name))
    .map(([name, { text }]) => readSheet(text, `${name}.md`));
  const sheets = [...house, ...own];
  return linkBook(
    sheets.sort(
      (a, b) => (a.number ?? Number.MAX_SAFE_INTEGER) - (b.number ?? Number.MAX_SAFE_INTEGER),
    ),
  );
}
