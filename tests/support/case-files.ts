import { readTree } from './source-tree.ts';

/** One case of a text file: what stands between its title and the first `==>`, and what is expected. */
export interface TextCase {
  readonly title: string;
  readonly source: string;
  /** Lines behind `==> `, in order. */
  readonly expected: readonly string[];
}

/**
 * The cases of all text files of a folder, by the file's name. A case starts with a line
 * `opening title` that follows an expectation or stands first; what stands before it is a note.
 */
export function readCases(
  folder: string,
  opening: string,
): ReadonlyMap<string, readonly TextCase[]> {
  const files = readTree(folder, ['.txt']);
  return new Map(
    [...files].map(([path, text]) => [path.slice(folder.length + 1), splitCases(text, opening)]),
  );
}

const EXPECTS = '==> ';

/** Cuts a text into cases. */
export function splitCases(text: string, opening: string): readonly TextCase[] {
  const cases: { title: string; lines: string[]; expected: string[] }[] = [];
  for (const line of text.split('\n')) {
    const open = cases.at(-1);
    const mayOpen = open === undefined || open.expected.length > 0;
    if (mayOpen && line.startsWith(`${opening} `)) {
      cases.push({ title: line.slice(opening.length + 1), lines: [], expected: [] });
    } else if (line.startsWith(EXPECTS)) open?.expected.push(line.slice(EXPECTS.length));
    else if (open?.expected.length === 0) open.lines.push(line);
  }
  return cases.map(({ title, lines, expected }) => ({
    title,
    source: lines.join('\n').replace(/\n+$/, ''),
    expected,
  }));
}
