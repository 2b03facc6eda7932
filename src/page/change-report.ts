import type { Sheet } from '../sheet/sheet.ts';
import { showValue } from '../sheet/show.ts';
import type { Desk } from './desk.ts';

/** More is not listened to. */
const MOST = 3;

/** What a change did to an open sheet, in words for those who listen. */
export function reportChange(desk: Desk, sheet: Sheet, cells: ReadonlySet<number>): string {
  const results = desk.book
    .cellsOf(sheet.name)
    .filter((cell) => cells.has(cell.index) && (cell.role === 'work' || cell.role === 'stack'));
  const told = results.slice(0, MOST).map(({ index, label, kind, display }) => {
    const outcome = desk.outcomeOf(index);
    if (outcome.state !== 'value' || kind === undefined) return `${label}: no value.`;
    return `${label}: ${showValue(outcome.value, kind, display, desk.system()).text}.`;
  });
  const rest = results.length - told.length;
  const more = rest > 0 ? [`${rest} more ${rest === 1 ? 'result' : 'results'}.`] : [];
  const errors = reportErrors(desk, sheet, cells);
  return [...errors, ...told, ...more, ...reportChecks(desk, sheet, cells)].join(' ');
}

function reportErrors(desk: Desk, sheet: Sheet, cells: ReadonlySet<number>): readonly string[] {
  return desk.book.cellsOf(sheet.name).flatMap((cell) => {
    if (cell.role !== 'given' || !cells.has(cell.index)) return [];
    const reading = desk.readingOf(cell);
    return reading.state === 'failed' ? [`Error, ${cell.label}: ${reading.problem.message}.`] : [];
  });
}

const WORDS = { pass: 'passes', fail: 'fails', unknown: 'cannot be told yet' } as const;

function reportChecks(desk: Desk, sheet: Sheet, cells: ReadonlySet<number>): readonly string[] {
  return desk.book.checks
    .filter((check) => check.sheet === sheet.name)
    .filter((check) => check.inputs.some((input) => cells.has(input)))
    .map((check) => `Check, ${check.statement.label}: ${WORDS[desk.verdictOf(check).verdict]}.`);
}
