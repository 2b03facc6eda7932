import { describe, expect, test } from 'vitest';
import { outcomeOf } from '../../src/sheet/solve.ts';
import { FAILS_ON_PURPOSE } from '../support/fails-on-purpose.ts';
import { openNotebooks, work } from '../support/notebooks.ts';
import { readTree } from '../support/source-tree.ts';
import { verdicts } from '../support/verdicts.ts';

const BOOK = openNotebooks();
const FRAME = work(BOOK, '20-gearing').frame;
const SHEETS = BOOK.sheets.map((sheet) => sheet.name);

/** Names that other people's work builds on: job files, the terminal, later sheets. */
const FIXED_NAMES: Readonly<Record<string, readonly string[]>> = {
  '20-gearing': [
    'tyre_width',
    'aspect_ratio',
    'rim_diameter',
    'rolling_factor',
    'measured_rollout',
    'axle_ratio',
    'gear_ratios',
    'redline',
    'cruise_speed',
    'tyre_diameter',
    'rolling_circumference',
    'engine_speed_at_cruise',
    'road_speed_at_redline',
    'engine_speed_after_upshift',
    'first_gear_overall',
  ],
  '70-release-bearing': [
    'finger_reading',
    'bearing_reading',
    'straightedge',
    'wanted_gap',
    'collar_pitch',
    'disc_wear',
    'lever_ratio',
    'shim_sizes',
    'gap',
    'out_by',
    'collar_turns',
    'shims',
    'finger_travel',
    'gap_when_worn',
  ],
};

/** Sheets that only set out what others have found, and check nothing themselves. */
const WITHOUT_CHECKS: readonly string[] = ['140-write-up'];

test('the sheets link without a problem', () => {
  expect(BOOK.problems).toEqual([]);
});

test.each(Object.entries(FIXED_NAMES))('%s keeps its published names', (sheet, names) => {
  expect(names.filter((name) => BOOK.find(sheet, name) === undefined)).toEqual([]);
});

describe.each(SHEETS)('%s', (name) => {
  const cells = BOOK.cells.filter((cell) => cell.sheet === name);

  test('has a value in every cell that is not left blank', () => {
    const states = cells.map((cell) => [cell.name, outcomeOf(BOOK, FRAME, cell.index)] as const);
    const unsolved = states.filter(([, { state }]) => state !== 'value' && state !== 'blank');
    expect(unsolved).toEqual([]);
  });

  test('opens with every check passed, but for those that fail on purpose', () => {
    const found = verdicts({ book: BOOK, frame: FRAME, sheet: name });
    const failing = Object.keys(found).filter((check) => found[check] !== 'pass');
    expect(Object.keys(found).length === 0).toBe(WITHOUT_CHECKS.includes(name));
    expect(failing.toSorted()).toEqual(Object.keys(FAILS_ON_PURPOSE[name] ?? {}).toSorted());
  });

  test('has its headings in order, one of the first rank', () => {
    const text = readTree('notebooks', [`${name}.md`])
      .values()
      .next().value!;
    const outside = text.replace(/^(`{3,})[\s\S]*?^\1$/gm, '');
    const ranks = [...outside.matchAll(/^(#+) /gm)].map((match) => match[1]!.length);
    expect(ranks[0]).toBe(1);
    expect(ranks.filter((rank) => rank === 1)).toHaveLength(1);
    ranks.slice(1).forEach((rank, i) => {
      expect(rank - ranks[i]!).toBeLessThanOrEqual(1);
    });
  });

  test('has a source for each window that it checks', () => {
    const own = BOOK.checks.filter((check) => check.sheet === name);
    const bare = own.filter((check) => check.statement.source === undefined);
    expect(bare.map((check) => check.statement.name)).toEqual([]);
  });
});
