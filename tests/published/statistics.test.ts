import { deviation, mean } from 'd3-array';
import { expect, test } from 'vitest';
import type { Reading } from '../../src/sheet/reading.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';
import { enter, numberIn, openText, work } from '../support/notebooks.ts';
import { readPublished, type Sourced } from '../support/published.ts';

interface Readings extends Sourced {
  readonly readings: string;
  readonly unit: string;
  readonly expect: { readonly mean: number; readonly deviation: number };
  readonly within: number;
}

interface Column extends Sourced {
  readonly values: readonly number[];
  readonly expect: { readonly sum: number; readonly mean: number; readonly deviation: number };
  readonly within: number;
}

const { checks, columns } = readPublished<{
  checks: readonly Readings[];
  columns: readonly Column[];
}>('statistics.json');

test.each(checks.map((check) => [check.id, check.what, check.kind, check] as const))(
  '%s: %s (%s)',
  (_id, _what, _kind, check) => {
    const worked = work(openText(`\`\`\`given\nreading = ${check.readings}\n\`\`\`\n`), 'made');
    const typed = enter(worked, 'reading', check.readings) as Extract<Reading, { state: 'value' }>;
    const factor = parseUnit(check.unit)!.factor;
    const numbers = typed.readings!.map((reading) => reading / factor);
    const found = numberIn(worked, 'reading', check.unit);
    expect(numbers).toHaveLength(check.readings.split(';').length);
    expect(Math.abs(found - check.expect.mean)).toBeLessThanOrEqual(check.within);
    expect(found).toBeCloseTo(mean(numbers)!, 8);
    expect(Math.abs(deviation(numbers)! - check.expect.deviation)).toBeLessThanOrEqual(
      check.within,
    );
  },
);

test.each(columns.map((column) => [column.id, column.what, column.kind, column] as const))(
  '%s: %s (%s)',
  (_id, _what, _kind, column) => {
    const { values, within } = column;
    const lines = [
      `column = [${values.join(', ')}]`,
      'total = sum(column)',
      'middle = total / count(column)',
      'spread = sqrt(sum((column - middle)^2) / (count(column) - 1))',
    ];
    const worked = work(openText(['```work', ...lines, '```', ''].join('\n')), 'made');
    expect(numberIn(worked, 'total', '')).toBeCloseTo(column.expect.sum, 9);
    expect(numberIn(worked, 'middle', '')).toBeCloseTo(mean(values)!, 12);
    expect(Math.abs(numberIn(worked, 'middle', '') - column.expect.mean)).toBeLessThanOrEqual(
      within,
    );
    expect(numberIn(worked, 'spread', '')).toBeCloseTo(deviation(values)!, 12);
    expect(Math.abs(deviation(values)! - column.expect.deviation)).toBeLessThanOrEqual(within);
  },
);
