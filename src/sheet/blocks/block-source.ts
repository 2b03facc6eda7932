import { type Cursor, createCursor, ReadFault } from '../../language/cursor.ts';
import type { Problem, Span } from '../../language/problem.ts';
import { type Places, placeProblem } from '../places.ts';
import { splitStatements } from '../split-statements.ts';

/** One fenced block of a sheet, as its reader gets it. */
export interface BlockSource {
  /** The whole sheet; all offsets count in it. */
  readonly source: string;
  readonly places: Places;
  /** What stands behind the block's word on the opening line. */
  readonly info: Span;
  /** Between the fences. */
  readonly body: Span;
  /** Line of the opening fence. */
  readonly line: number;
}

/** Reads something and keeps the fault, if there is one, as a placed problem. */
export function attempt<T>(
  { places }: BlockSource,
  problems: Problem[],
  read: () => T,
): T | undefined {
  try {
    return read();
  } catch (fault) {
    if (!(fault instanceof ReadFault)) throw fault;
    problems.push(placeProblem(fault.problem, places));
    return undefined;
  }
}

/** A cursor over a stretch of the block. */
export function cursorOver(block: BlockSource, span: Span): Cursor {
  return createCursor(block.source, 'sheet', span.from, span.to);
}

/** Reads each statement of the body; a statement with a fault is left out and its problem kept. */
export function readStatements<T>(
  block: BlockSource,
  read: (cursor: Cursor, span: Span) => T,
): { readonly statements: readonly T[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const statements = splitStatements(block.source, block.body.from, block.body.to).flatMap(
    (span) => {
      const statement = attempt(block, problems, () => read(cursorOver(block, span), span));
      return statement === undefined ? [] : [statement];
    },
  );
  return { statements, problems };
}
