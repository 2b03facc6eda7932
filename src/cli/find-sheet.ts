import { basename, dirname, join } from 'node:path';
import { didYouMean, nearest } from '../units/nearest.ts';
import type { Terminal } from './terminal.ts';

/** A sheet's file as found. */
export interface SheetFile {
  /** For messages and for places: as typed, or below the folder where it was found. */
  readonly path: string;
  readonly folder: string;
  readonly text: string;
}

/** No such sheet: why, with the names most like the one that was asked for. */
export interface NoSheet {
  readonly path?: undefined;
  readonly sentence: string;
}

/**
 * The sheet that a person names: by its path, its file name or its name alone. The last two are
 * looked for in the terminal's folders of sheets.
 */
export function findSheet(terminal: Terminal, named: string): SheetFile | NoSheet {
  for (const path of listPlaces(terminal, named)) {
    const text = terminal.readText(path);
    if (text !== undefined) return { path, folder: dirname(path), text };
  }
  const near = didYouMean(nearest(stem(basename(named)), listSheets(terminal)));
  return { sentence: `there is no sheet "${named}"${near}` };
}

function listPlaces(terminal: Terminal, named: string): readonly string[] {
  const spellings = named.endsWith('.md') ? [named] : [`${named}.md`, named];
  const folders = terminal.sheetFolders.flatMap((folder) =>
    spellings.map((spelling) => join(folder, spelling)),
  );
  return [...spellings, ...folders];
}

/** Names of the sheets in the first folder of sheets that has any. */
export function listSheets(terminal: Terminal): readonly string[] {
  const folders = terminal.sheetFolders.map((folder) => terminal.listFolder(folder));
  const sheets = folders.map((files) => files.filter((file) => file.endsWith('.md')).map(stem));
  return sheets.find((names) => names.length > 0) ?? [];
}

function stem(file: string): string {
  return file.replace(/\.md$/, '');
}
