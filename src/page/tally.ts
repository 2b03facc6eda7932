import { isStarted } from '../job/record.ts';
import type { Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import type { Tally } from './stop.ts';

/** Counts how the checks and steps of a sheet stand. */
export function tallySheet(desk: Desk, sheet: Sheet): Tally {
  const verdicts = desk.book.checks
    .filter((check) => check.sheet === sheet.name)
    .map((check) => desk.verdictOf(check).verdict);
  const count = (wanted: string): number => verdicts.filter((verdict) => verdict === wanted).length;
  const steps = sheet.parts.flatMap((part) => (part.kind === 'steps' ? part.steps : []));
  return {
    started: isStarted(desk.job(), sheet.name),
    passes: count('pass'),
    fails: count('fail'),
    unknown: count('unknown'),
    stepsLeft: steps.filter((step) => desk.dayOf(sheet.name, step) === undefined).length,
  };
}
