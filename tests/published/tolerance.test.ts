import { expect, test } from 'vitest';
import type { Reading } from '../../src/sheet/reading.ts';
import { type Entries, enter, numberIn, type Worked } from '../support/notebooks.ts';
import { type OutsideCheck, readPublished, workCheck } from '../support/published.ts';

const { checks } = readPublished<{ checks: readonly OutsideCheck[] }>('tolerance.json');

test.each(checks.map((check) => [check.id, check.what, check.kind, check] as const))(
  '%s: %s (%s)',
  (_id, _what, _kind, check) => {
    const { name, unit, value, within } = check.expect[0]!;
    const spread = combine(check.spread!, listDeviations(check, name, unit));
    expect(Math.abs(spread - (value as number))).toBeLessThanOrEqual(within!);
  },
);

/** How far the result moves when one reading stands at the upper end of its tolerance, each in turn. */
function listDeviations(check: OutsideCheck, name: string, unit: string): number[] {
  const given = check.given ?? {};
  const nominal = workCheck(check);
  const start = numberIn(nominal, name, unit);
  return Object.keys(given).map((reading) => {
    const moved: Entries = { ...given, [reading]: upperEnd(nominal, reading, given[reading]!) };
    return numberIn(workCheck(check, moved), name, unit) - start;
  });
}

function upperEnd(worked: Worked, name: string, text: string): string {
  const reading = enter(worked, name, text) as Extract<Reading, { state: 'value' }>;
  const unit = reading.unit!;
  return `${((reading.value as number) + reading.tolerance!.plus) / unit.factor} ${unit.symbol}`;
}

function combine(spread: 'worst' | 'likely', deviations: readonly number[]): number {
  if (spread === 'likely') return Math.hypot(...deviations);
  return deviations.reduce((sum, deviation) => sum + Math.abs(deviation), 0);
}
