import type { Terminal } from '../../src/cli/terminal.ts';

/** A terminal with made-up files that remembers what was written to it. */
export interface MadeTerminal extends Terminal {
  readonly out: () => string;
  readonly errors: () => string;
  readonly files: ReadonlyMap<string, string>;
  readonly bytes: ReadonlyMap<string, Uint8Array>;
}

/** Sheets are looked for in `notebooks` as in the real one. */
export function makeTerminal(files: Readonly<Record<string, string>> = {}): MadeTerminal {
  const held = new Map(Object.entries(files));
  const bytes = new Map<string, Uint8Array>();
  const out: string[] = [];
  const errors: string[] = [];
  return {
    write: (text) => out.push(text),
    complain: (text) => errors.push(text),
    readText: (path) => held.get(path),
    listFolder: (path) => listBelow(held, path),
    saveText: (path, text) => {
      if (path.startsWith('closed/')) throw new Error(`EACCES: permission denied, open '${path}'`);
      held.set(path, text);
    },
    saveBytes: (path, content) => {
      if (path.startsWith('closed/')) throw new Error(`EACCES: permission denied, open '${path}'`);
      bytes.set(path, content);
    },
    sheetFolders: ['notebooks'],
    out: () => out.join(''),
    errors: () => errors.join(''),
    files: held,
    bytes,
  };
}

function listBelow(files: ReadonlyMap<string, string>, folder: string): readonly string[] {
  const below = [...files.keys()].filter((path) => path.startsWith(`${folder}/`));
  return below.map((path) => path.slice(folder.length + 1)).sort();
}
