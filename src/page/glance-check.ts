import type { Kind } from '../language/kind.ts';
import type { Cell, Check } from '../sheet/cell.ts';
import { showValue } from '../sheet/show.ts';
import type { Verdict } from '../sheet/verdict.ts';
import type { Desk } from './desk.ts';
import { namesFor } from './element-names.ts';

/** A check in two words: the value that decides it, and how it stands. */
export interface CheckGlance {
  readonly verdict: Verdict['verdict'];
  readonly value: string;
  readonly words: string;
}

/** What one sees of a check from a distance; its gauge, further down, tells the rest. */
export function glanceAtCheck(desk: Desk, check: Check): CheckGlance {
  const verdict = desk.verdictOf(check);
  const subject = desk.book.cells[check.subject ?? -1];
  return {
    verdict: verdict.verdict,
    value: subject === undefined ? '–' : showDeciding(desk, subject, verdict),
    words: subject === undefined ? 'cannot be told' : judge(desk, subject, verdict),
  };
}

/** Of a list the value that stands nearest to its limit, or furthest beyond it, with its name. */
function showDeciding(desk: Desk, subject: Cell, verdict: Verdict): string {
  const outcome = desk.outcomeOf(subject.index);
  if (outcome.state !== 'value' || subject.kind === undefined) return '–';
  const { value } = outcome;
  if (!(value instanceof Float64Array) || verdict.verdict === 'unknown') {
    return showValue(value, subject.kind, subject.display, desk.system()).text;
  }
  const name = namesFor(desk, subject)?.[verdict.worst] ?? `no. ${verdict.worst + 1}`;
  return `${name}: ${showOne(desk, subject, value[verdict.worst]!)}`;
}

function showOne(desk: Desk, { kind, display }: Cell, value: number): string {
  const { dimension } = kind as Extract<Kind, { readonly dimension: unknown }>;
  return showValue(value, { type: 'quantity', dimension }, display, desk.system()).text;
}

function judge(desk: Desk, subject: Cell, verdict: Verdict): string {
  if (verdict.verdict === 'unknown') return 'cannot be told yet';
  const isOne = verdict.least !== undefined && verdict.least === verdict.most;
  if (verdict.values.length === 0 || isOne) return verdict.verdict === 'pass' ? 'fits' : 'differs';
  const margin = showOne(desk, subject, verdict.margin);
  if (verdict.verdict === 'fail') {
    return verdict.side === 'below' ? `too little by ${margin}` : `too much by ${margin}`;
  }
  return `inside by ${margin}`;
}
