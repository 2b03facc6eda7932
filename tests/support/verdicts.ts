import { verdictOf } from '../../src/sheet/verdict.ts';
import type { Worked } from './notebooks.ts';

/** How each check of the sheet came out, by the name that is checked. */
export function verdicts(worked: Worked): Record<string, string> {
  const { book, frame, sheet } = worked;
  const own = book.checks.filter((check) => check.sheet === sheet);
  return Object.fromEntries(
    own.map((check) => [check.statement.name, verdictOf(book, frame, check).verdict]),
  );
}
