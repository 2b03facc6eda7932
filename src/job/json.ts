import type { ByName } from './record.ts';

/** Deeper nesting is no job of ours, and would be too deep for what walks over it. */
export const DEEPEST = 60;

export function isRecord(data: unknown): data is ByName<unknown> {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}

export function isText(data: unknown): data is string {
  return typeof data === 'string';
}

/**
 * JSON with its keys in order of their code units, so that the same data is the same text whoever
 * wrote it. Keys that look like whole numbers, which JavaScript would put first, stand in order too.
 *
 * @param indent blanks a level; none puts all on one line
 */
export function formatSorted(data: unknown, indent = 0): string {
  return write(data, indent, indent === 0 ? '' : '\n');
}

function write(data: unknown, indent: number, line: string): string {
  const inner = line === '' ? '' : line + ' '.repeat(indent);
  if (Array.isArray(data)) {
    return wrap(
      '[',
      ']',
      data.map((item) => write(item, indent, inner)),
      line,
      inner,
    );
  }
  if (!isRecord(data)) return JSON.stringify(data);
  const colon = line === '' ? ':' : ': ';
  const members = Object.keys(data)
    .filter((key) => data[key] !== undefined)
    .sort()
    .map((key) => `${JSON.stringify(key)}${colon}${write(data[key], indent, inner)}`);
  return wrap('{', '}', members, line, inner);
}

function wrap(
  open: string,
  close: string,
  items: readonly string[],
  line: string,
  inner: string,
): string {
  if (items.length === 0) return open + close;
  return `${open}${inner}${items.join(`,${inner}`)}${line}${close}`;
}

/** True where data is nested no deeper than so many levels. */
export function isShallow(data: unknown, levels = DEEPEST): boolean {
  if (typeof data !== 'object' || data === null) return true;
  return levels > 0 && Object.values(data).every((item) => isShallow(item, levels - 1));
}
