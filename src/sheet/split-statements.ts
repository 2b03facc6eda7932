import type { Span } from '../language/problem.ts';

/**
 * Cuts the body of a block into statements: a line, with the lines after it that start with
 * blanks. Empty lines and lines that start with # stand between statements.
 *
 * @param source the whole sheet; `from` and `to` enclose the body
 */
export function splitStatements(source: string, from: number, to: number): readonly Span[] {
  const statements: { from: number; to: number }[] = [];
  const margin = marginOf(source.slice(from, to));
  for (let start = from; start < to; ) {
    const newline = source.indexOf('\n', start);
    const end = newline < 0 || newline > to ? to : newline;
    const line = source.slice(start, end);
    const indent = line.length - line.trimStart().length;
    const open = statements.at(-1);
    if (line.trim() !== '' && line[indent] !== '#') {
      if (indent > margin && open !== undefined) open.to = end;
      else statements.push({ from: start + indent, to: end });
    }
    start = end + 1;
  }
  return statements;
}

/** Blanks before the first line that says something: an indented block counts from there. */
function marginOf(body: string): number {
  return /^(?:[^\S\n]*(?:#[^\n]*)?\n)*([^\S\n]*)/.exec(body)?.[1]?.length ?? 0;
}
