import type { Token } from 'marked';
import type { Part, Sheet } from '../sheet/sheet.ts';

interface Heading {
  readonly depth: number;
}

/**
 * The sheet without its narrative: its blocks, and of its headings those that a block stands under.
 * Cautions are blocks, and stay. A practice question is of no use without the words that lead to it.
 */
export function withoutNarrative(sheet: Sheet): Sheet {
  const parts: Part[] = [];
  let open: readonly (Token & Heading)[] = [];
  for (const part of sheet.parts) {
    if (part.kind === 'practice') continue;
    if (part.kind === 'narrative') {
      open = part.tokens.filter(isHeading).reduce(nest, open);
      continue;
    }
    if (open.length > 0) parts.push({ kind: 'narrative', tokens: open, line: part.line });
    parts.push(part);
    open = [];
  }
  return { ...sheet, parts: keepTitle(parts, sheet) };
}

/** Headings that still lead somewhere: one of the same level or above takes the place of those before it. */
function nest<T extends Heading>(open: readonly T[], heading: T): readonly T[] {
  return [...open.filter(({ depth }) => depth < heading.depth), heading];
}

/** The page takes the first heading of a sheet for its title, which it shows apart. */
function keepTitle(parts: readonly Part[], sheet: Sheet): readonly Part[] {
  const title = sheet.parts.find((part) => part.kind === 'narrative')?.tokens.find(isHeading);
  const first = parts.find((part) => part.kind === 'narrative')?.tokens[0];
  if (title === undefined || first === title) return parts;
  return [{ kind: 'narrative', tokens: [title], line: 1 }, ...parts];
}

function isHeading(token: Token): token is Token & Heading {
  return token.type === 'heading';
}
