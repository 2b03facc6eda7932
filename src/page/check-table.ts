import type { Value } from '../language/kind.ts';
import type { Cell, Check, Formula } from '../sheet/cell.ts';
import type { CheckBlock } from '../sheet/sheet.ts';
import { showValue } from '../sheet/show.ts';
import { meaningOf, type Verdict } from '../sheet/verdict.ts';
import { checkId } from './check-id.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import { createIcon } from './icon.ts';
import type { View } from './view.ts';

const WORDS = { pass: 'fits', fail: 'does not fit', unknown: 'unknown' } as const;
const CLASSES = { pass: 'passes', fail: 'fails', unknown: 'unknown' } as const;

/** Checks as a table: what is compared, this against that, whether it fits. */
export function createCheckTable(desk: Desk, block: CheckBlock): View {
  const body = h('tbody');
  const checks = desk.book.checks.filter(({ statement }) => block.statements.includes(statement));
  const title = block.title ?? 'Checks';
  const head = ['What', 'This', 'Against', 'Verdict'].map((word) =>
    h('th', { scope: 'col' }, word),
  );

  function refresh(): void {
    fill(body, ...checks.flatMap((check) => createLines(desk, check)));
  }

  refresh();
  const table = h(
    'table',
    { class: 'checks' },
    h('caption', {}, title),
    h('thead', {}, h('tr', {}, ...head)),
    body,
  );
  return {
    element: h(
      'div',
      { class: 'wide', tabindex: 0, role: 'group', 'aria-label': title },
      table,
      createSources(checks),
    ),
    cells: checks.flatMap(({ inputs, subject }) => [
      ...inputs,
      ...(subject === undefined ? [] : [subject]),
    ]),
    refresh,
  };
}

/** The check, and below it what it means where it fails. */
function createLines(desk: Desk, check: Check): readonly HTMLElement[] {
  const verdict = desk.verdictOf(check);
  const subject = desk.book.cells[check.subject ?? -1];
  const meaning = meaningOf(check, verdict);
  const line = h(
    'tr',
    { id: checkId(check), tabindex: -1, class: meaning !== undefined && 'told-below' },
    h('th', { scope: 'row' }, check.statement.label),
    h('td', {}, subject === undefined ? '' : showSubject(desk, subject)),
    h('td', {}, subject === undefined ? '' : describeWindow(desk, check, subject)),
    h(
      'td',
      { class: CLASSES[verdict.verdict] },
      createIcon(verdict.verdict),
      ` ${wordFor(check, verdict)}`,
    ),
  );
  if (meaning === undefined) return [line];
  return [line, h('tr', {}, h('td', { class: 'meaning', colspan: 4 }, meaning))];
}

/** Where the windows come from, together below the table so that its lines stay short. */
function createSources(checks: readonly Check[]): HTMLElement | undefined {
  const lines = checks.flatMap(({ statement: { label, source } }) =>
    source === undefined ? [] : [h('li', {}, h('b', {}, `${label}: `), source)],
  );
  if (lines.length === 0) return undefined;
  return h('details', {}, h('summary', {}, 'Where each line comes from'), h('ul', {}, ...lines));
}

/** A window is kept or not; only what must be equal fits or does not. */
function wordFor({ equals }: Pick<Check, 'equals'>, { verdict }: Verdict): string {
  if (equals !== undefined || verdict === 'unknown') return WORDS[verdict];
  return verdict === 'pass' ? 'inside' : 'outside';
}

function showSubject(desk: Desk, subject: Cell): string {
  const outcome = desk.outcomeOf(subject.index);
  return outcome.state === 'value' ? show(desk, subject, outcome.value) : '–';
}

function show(desk: Desk, { kind, display }: Cell, value: Value): string {
  return kind === undefined ? '–' : showValue(value, kind, display, desk.system()).text;
}

function describeWindow(desk: Desk, { equals, least, most }: Check, subject: Cell): string {
  const limit = (formula: Formula) => {
    const value = desk.workOut(formula);
    const isThere = value !== undefined && !Number.isNaN(value);
    return isThere ? show(desk, { ...subject, kind: formula.kind }, value) : '–';
  };
  if (equals !== undefined) return limit(equals);
  if (least !== undefined && most !== undefined) return `${limit(least)} to ${limit(most)}`;
  if (least !== undefined) return `at least ${limit(least)}`;
  return most === undefined ? '' : `at most ${limit(most)}`;
}
