import { ordinal } from '../language/functions/lists.ts';
import type { Kind } from '../language/kind.ts';
import type { Book } from '../sheet/book.ts';
import type { Cell, Check } from '../sheet/cell.ts';
import type { Frame } from '../sheet/frame.ts';
import { showValue } from '../sheet/show.ts';
import { outcomeOf } from '../sheet/solve.ts';
import { meaningOf, type Verdict, verdictOf } from '../sheet/verdict.ts';
import { describeVerdict } from '../sheet/verdict-words.ts';
import type { CheckRecord } from './solve-record.ts';

/** The checks of a sheet as judged, in its order. */
export function recordChecks(book: Book, frame: Frame, sheet: string): readonly CheckRecord[] {
  const own = book.checks.filter((check) => check.sheet === sheet);
  return own.map((check) => {
    const verdict = verdictOf(book, frame, check);
    const name = check.statement.name;
    return { name, verdict: verdict.verdict, text: tell(book, frame, check, verdict) };
  });
}

function tell(book: Book, frame: Frame, check: Check, verdict: Verdict): string {
  const subject = check.subject === undefined ? undefined : book.cells[check.subject];
  const said = describeVerdict(verdict, {
    show: (value) => (subject === undefined ? String(value) : show(value, subject)),
    name: (place) => ordinal(place + 1),
  });
  return [said, ...explain(book, frame, check, verdict)].join(' ');
}

/** What it means to be outside, or why nothing can be told. */
function explain(book: Book, frame: Frame, check: Check, verdict: Verdict): readonly string[] {
  const meaning = meaningOf(check, verdict);
  if (meaning !== undefined) return [meaning];
  if (verdict.verdict !== 'unknown') return [];
  if (check.problem !== undefined) return [check.problem.message];
  const outcomes = check.inputs.map((index) => ({
    name: book.cells[index]!.name,
    outcome: outcomeOf(book, frame, index),
  }));
  const missing = outcomes.find(({ outcome }) => outcome.state !== 'value');
  if (missing === undefined) return [];
  const { name, outcome } = missing;
  return 'problem' in outcome ? [`${name}: ${outcome.problem.message}`] : [`${name} is blank`];
}

function show(value: number, { kind, display }: Cell): string {
  const single: Kind | undefined =
    kind?.type === 'list' ? { type: 'quantity', dimension: kind.dimension } : kind;
  return single === undefined ? String(value) : showValue(value, single, display).text;
}
