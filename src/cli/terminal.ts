import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** All that the commands may touch of the world outside. Paths are as typed or joined to it. */
export interface Terminal {
  /** To standard output. */
  readonly write: (text: string) => void;
  /** To standard error. */
  readonly complain: (text: string) => void;
  /** The text of a file; undefined where there is none or it is a folder. */
  readonly readText: (path: string) => string | undefined;
  /** Names of the files in a folder; none where there is no such folder. */
  readonly listFolder: (path: string) => readonly string[];
  /** Throws what the system says where the file cannot be written. */
  readonly saveText: (path: string, text: string) => void;
  /** As `saveText`, for files that are not text. */
  readonly saveBytes: (path: string, bytes: Uint8Array) => void;
  /** Folders in which a sheet is looked for by its name alone, in this order. */
  readonly sheetFolders: readonly string[];
}

/** Exit codes: what a script that calls the program can rely on. */
export const DONE = 0;
export const PROBLEM = 1;
export const WRONG_USE = 2;
export type ExitCode = typeof DONE | typeof PROBLEM | typeof WRONG_USE;

/** The real terminal. */
export function createTerminal(): Terminal {
  // A reader that has seen enough, such as `head`, closes the pipe: no reason to complain.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
  return {
    write: (text) => process.stdout.write(text),
    complain: (text) => process.stderr.write(text),
    readText: maybeText,
    listFolder: (path) => (existsSync(path) ? readdirSync(path).sort() : []),
    saveText: (path, text) => writeFileSync(path, text),
    saveBytes: (path, bytes) => writeFileSync(path, bytes),
    sheetFolders: ['notebooks', fileURLToPath(new URL('../../notebooks', import.meta.url))],
  };
}

function maybeText(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}

/** Says what was wrong with the command and what to do about it. */
export function refuse(terminal: Terminal, sentence: string, hint: string): typeof WRONG_USE {
  terminal.complain(`layshaft: ${sentence}\n${hint}\n`);
  return WRONG_USE;
}
