import { listBlockKeys } from '../job/block-key.ts';
import { entryIn, type Job, noteIn, tickIn } from '../job/record.ts';
import type { Book } from '../sheet/book.ts';
import type { Cell, GivenCell } from '../sheet/cell.ts';
import type { Frame } from '../sheet/frame.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { showValue } from '../sheet/show.ts';
import { outcomeOf } from '../sheet/solve.ts';
import { recordChecks } from './record-checks.ts';
import { listResults } from './record-results.ts';

/** A sheet of a job as rows of text. */
export interface SheetReport {
  readonly title: string;
  /** What was entered: label, as typed, as understood. */
  readonly readings: readonly (readonly string[])[];
  readonly results: readonly (readonly string[])[];
  readonly checks: readonly (readonly string[])[];
  /** Step, day, who; the last two '' while it is open. */
  readonly steps: readonly (readonly string[])[];
  readonly notes: readonly (readonly string[])[];
}

export function reportSheet(job: Job, book: Book, frame: Frame, sheet: Sheet): SheetReport {
  const show = (cell: Cell): string => showCell(job, book, frame, cell);
  const givens = book
    .cellsOf(sheet.name)
    .filter((cell): cell is GivenCell => cell.role === 'given');
  const labels = book.checks.filter((check) => check.sheet === sheet.name);
  const checks = recordChecks(book, frame, sheet.name);
  return {
    title: sheet.title,
    readings: givens.flatMap((cell) => {
      const entry = entryIn(job, sheet.name, cell.name);
      return entry === undefined ? [] : [[cell.label, describeEntry(entry), show(cell)]];
    }),
    results: listResults(book, sheet.name).map((cell) => [cell.label, show(cell)]),
    checks: checks.map(({ verdict, text }, i) => [labels[i]!.statement.label, verdict, text]),
    steps: listSteps(job, sheet),
    notes: [...listBlockKeys(sheet).values()].flatMap((key) => {
      const note = noteIn(job, sheet.name, key);
      return note === undefined ? [] : [[key, note]];
    }),
  };
}

function describeEntry({ text, unit }: { readonly text: string; readonly unit?: string }): string {
  if (text.trim() === '') return 'left blank';
  return /[\d\])]$/.test(text.trim()) && unit !== undefined ? `${text} ${unit}` : text;
}

function showCell(job: Job, book: Book, frame: Frame, cell: Cell): string {
  const outcome = outcomeOf(book, frame, cell.index);
  if (outcome.state === 'blank') return 'blank';
  if (outcome.state !== 'value') return outcome.problem.message;
  return showValue(outcome.value, cell.kind!, cell.display, job.system).text;
}

function listSteps(job: Job, sheet: Sheet): readonly (readonly string[])[] {
  const steps = sheet.parts.flatMap((part) => (part.kind === 'steps' ? part.steps : []));
  return steps.map(({ id, text }) => {
    const tick = tickIn(job, sheet.name, id);
    return [text, tick?.on ?? '', tick?.by ?? ''];
  });
}
