import type { Book } from '../sheet/book.ts';
import { createFrame } from '../sheet/create-frame.ts';
import { enterGiven } from '../sheet/enter.ts';
import type { Frame } from '../sheet/frame.ts';
import { originOf } from '../sheet/origin.ts';
import { solve } from '../sheet/solve.ts';
import { didYouMean, nearest } from '../units/nearest.ts';
import type { Job } from './record.ts';
import { findVariant, listDifferences, resolveVariant } from './variants.ts';

/** The job, or one of its variants, worked. */
export interface Column {
  /** The variant's; undefined for the job itself. */
  readonly variant: string | undefined;
  /** Undefined where there is nothing to work: see `faults`. */
  readonly frame: Frame | undefined;
  /** What is wrong with the column, as sentences; what could be worked was. */
  readonly faults: readonly string[];
}

/** The job as it is and each of its variants, every one worked on its own. */
export function workColumns(book: Book, job: Job): readonly Column[] {
  const own: Column = { variant: undefined, ...workJob(book, job) };
  return [own, ...job.variants.map(({ name }) => workVariant(book, job, name))];
}

function workVariant(book: Book, job: Job, name: string): Column {
  const resolved = resolveVariant(job, name);
  if (resolved.state === 'broken') {
    return { variant: name, frame: undefined, faults: [resolved.sentence] };
  }
  const { frame, faults } = workJob(book, resolved.job);
  return { variant: name, frame, faults: [...findStrangers(book, job, name), ...faults] };
}

/** What was typed of a whole job, worked. What cannot be read is told. */
export function workJob(book: Book, { entries }: Job): { frame: Frame; faults: readonly string[] } {
  const frame = createFrame(book);
  const faults = Object.entries(entries).flatMap(([sheet, own]) =>
    Object.entries(own).flatMap(([name, entry]) => {
      const cell = originOf(book, book.find(sheet, name));
      if (cell?.role !== 'given') return [];
      const reading = enterGiven(book, frame, cell.index, entry);
      return reading.state === 'failed' ? [`${cell.label}: ${reading.problem.message}.`] : [];
    }),
  );
  solve(book, frame);
  return { frame, faults };
}

/** Differences that name what no sheet has. Entries of the job itself may be of sheets not open here. */
function findStrangers(book: Book, job: Job, name: string): readonly string[] {
  const { entries } = findVariant(job, name)!;
  return listDifferences(entries).flatMap(({ sheet, given }) => {
    if (originOf(book, book.find(sheet, given))?.role === 'given') return [];
    const names = book.cellsOf(sheet).map((cell) => cell.name);
    if (names.length === 0)
      return [`There is no sheet "${sheet}" here, so its "${given}" is left out.`];
    const why =
      book.find(sheet, given) === undefined
        ? `has no "${given}"${didYouMean(nearest(given, names)) || '.'}`
        : `works "${given}" out; only what is measured or chosen can be different.`;
    return [`Sheet ${sheet} ${why}`];
  });
}
