import type { Book } from '../sheet/book.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { listBlockKeys } from './block-key.ts';
import { type ByName, type Job, own } from './record.ts';
import { sheetVersion } from './sheet-version.ts';

/** How a job stands to one sheet that is not as it was when something was entered beside it. */
export interface Misfit {
  readonly sheet: string;
  /** The sheet is not in the book at all. */
  readonly isGone: boolean;
  /** Its text is another than the one beside which something was entered last. */
  readonly isChanged: boolean;
  /** What is kept in the job and has no place on the sheet. */
  readonly strays: readonly Stray[];
}

export interface Stray {
  readonly what: 'entry' | 'step' | 'note';
  readonly name: string;
  readonly text: string;
}

/** Every sheet of which the job holds something and that is gone, changed, or lacks a place for it. */
export function listMisfits(job: Job, book: Book): readonly Misfit[] {
  const names = [job.sheets, job.entries, job.ticks, job.notes].flatMap((part) =>
    Object.keys(part),
  );
  return [...new Set(names)]
    .map((name) => judge(job, book, name))
    .filter(({ isGone, isChanged, strays }) => isGone || isChanged || strays.length > 0);
}

function judge(job: Job, book: Book, name: string): Misfit {
  const sheet = book.sheets.find((one) => one.name === name);
  const version = own(job.sheets, name);
  return {
    sheet: name,
    isGone: sheet === undefined,
    isChanged: sheet !== undefined && version !== undefined && version !== sheetVersion(sheet),
    strays: listStrays(job, book, name, sheet),
  };
}

function listStrays(
  job: Job,
  book: Book,
  name: string,
  sheet: Sheet | undefined,
): readonly Stray[] {
  const steps = new Set(
    sheet?.parts.flatMap((part) => (part.kind === 'steps' ? part.steps.map(({ id }) => id) : [])),
  );
  const blocks = new Set(sheet === undefined ? [] : listBlockKeys(sheet).values());
  return [
    ...strays(job.entries, name, (given) => book.find(name, given)?.role === 'given').map(
      ([given, { text, unit }]) => stray('entry', given, unit ? `${text} ${unit}` : text),
    ),
    ...strays(job.ticks, name, (step) => steps.has(step)).map(([step, { on, by }]) =>
      stray('step', step, by === undefined ? on : `${on}, ${by}`),
    ),
    ...strays(job.notes, name, (block) => blocks.has(block)).map(([block, text]) =>
      stray('note', block, text),
    ),
  ];
}

function strays<T>(
  all: ByName<ByName<T>>,
  sheet: string,
  hasPlace: (name: string) => boolean,
): readonly (readonly [string, T])[] {
  return Object.entries(own(all, sheet) ?? {}).filter(([name]) => !hasPlace(name));
}

function stray(what: Stray['what'], name: string, text: string): Stray {
  return { what, name, text };
}
