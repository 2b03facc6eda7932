import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import {
  type Entries,
  numbersIn,
  openNotebooks,
  openText,
  type Worked,
  work,
} from './notebooks.ts';
import { ROOT } from './source-tree.ts';

const BOOK = openNotebooks();

/** What kind of source a figure has; DEVELOPERS.md says what each means. */
export const KINDS = ['published', 'common practice', 'memory', 'derived'] as const;

export interface Sourced {
  readonly id: string;
  readonly what: string;
  readonly kind: (typeof KINDS)[number];
  readonly source: string;
}

/** A figure from outside, to be met by a sheet of the project or by formulas of its own. */
export interface OutsideCheck extends Sourced {
  /** The sheet that the entries are typed into; without one a sheet is made of `given` and `work`. */
  readonly sheet?: string;
  readonly given?: Entries;
  readonly work?: Entries;
  readonly spread?: 'worst' | 'likely';
  readonly expect: readonly Expected[];
}

export interface Expected {
  readonly name: string;
  /** The sheet that it is read on, where that is another than the entries are typed into. */
  readonly sheet?: string;
  readonly unit: string;
  readonly value?: number | readonly number[];
  readonly within?: number;
  readonly least?: number;
  readonly most?: number;
}

/** One file of `shared/published`. */
export function readPublished<T>(file: string): T {
  return JSON.parse(readFileSync(join(ROOT, 'shared/published', file), 'utf8')) as T;
}

/** A test for each check of a file, titled with what it says and where that comes from. */
export function testPublished(file: string): void {
  const { checks } = readPublished<{ checks: readonly OutsideCheck[] }>(file);
  test.each(checks.map((check) => [check.id, check.what, check.kind, check] as const))(
    '%s: %s (%s)',
    (_id, _what, _kind, check) => {
      const worked = workCheck(check);
      for (const expected of check.expect) expectMet(worked, expected);
    },
  );
}

/** The check's sheet with its entries, worked. */
export function workCheck(check: OutsideCheck, given: Entries = check.given ?? {}): Worked {
  if (check.sheet !== undefined) return work(BOOK, check.sheet, given);
  return work(openText(makeSheet(given, check.work ?? {})), 'made');
}

function makeSheet(given: Entries, formulas: Entries): string {
  return [block('given', given), block('work', formulas)].join('\n');
}

function block(kind: string, lines: Entries): string {
  const written = Object.entries(lines).map(([name, text]) => `${name} = ${text}`);
  return written.length === 0 ? '' : ['```' + kind, ...written, '```', ''].join('\n');
}

function expectMet(worked: Worked, expected: Expected): void {
  const { sheet = worked.sheet } = expected;
  const found = numbersIn({ ...worked, sheet }, expected.name, expected.unit);
  for (const number of found) {
    expect(number).toBeGreaterThanOrEqual(expected.least ?? Number.NEGATIVE_INFINITY);
    expect(number).toBeLessThanOrEqual(expected.most ?? Number.POSITIVE_INFINITY);
  }
  if (expected.value === undefined) return;
  const wanted = [expected.value].flat();
  expect(found).toHaveLength(wanted.length);
  found.forEach((number, i) => {
    expect(Math.abs(number - wanted[i]!), `${expected.name}: ${number}`).toBeLessThanOrEqual(
      expected.within!,
    );
  });
}
