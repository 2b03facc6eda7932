import { expect, test } from 'vitest';
import type { Book } from '../../src/sheet/book.ts';
import { meaningOf, verdictOf } from '../../src/sheet/verdict.ts';
import { type Entries, work } from './notebooks.ts';

/**
 * Readings that put a checked value outside its window on one side, and words of the sentence for it.
 * A text is neither below nor above what it should be, only `unlike` it.
 */
export type Outside = readonly [
  name: string,
  side: 'below' | 'above' | 'unlike',
  entries: Entries,
  words: string,
];

/**
 * A test for each side of each window of a sheet, and one that none is left out: a side counts where the
 * sheet has a sentence for it.
 */
export function testWindows(book: Book, sheet: string, rows: readonly Outside[]): void {
  const checks = book.checks.filter((check) => check.sheet === sheet);

  test.each(rows)('%s %s its window with %j says so', (name, side, entries, words) => {
    const check = checks.find(({ statement }) => statement.name === name)!;
    const verdict = verdictOf(book, work(book, sheet, entries).frame, check);
    expect(verdict).toMatchObject({ verdict: 'fail', ...(side === 'unlike' ? {} : { side }) });
    expect(meaningOf(check, verdict)).toContain(words);
  });

  test('every side of every window has been tried', () => {
    const sides = checks.flatMap(sidesOf);
    expect(rows.map(([name, side]) => `${name} ${side}`).toSorted()).toEqual(sides.toSorted());
  });
}

/** The sides of a window that the sheet has a sentence for, each with the name of what is checked. */
function sidesOf({ statement, equals }: Book['checks'][number]): readonly string[] {
  const told = (['below', 'above'] as const).filter((side) => statement[side] !== undefined);
  const sides = equals?.kind.type === 'text' ? told.map(() => 'unlike') : told;
  return sides.map((side) => `${statement.name} ${side}`);
}
