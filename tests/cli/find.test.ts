import { describe, expect, test } from 'vitest';
import { find } from '../../src/cli/find.ts';
import type { FindRecord } from '../../src/cli/find-record.ts';
import { parseArguments } from '../../src/cli/parse-arguments.ts';
import { SHEETS } from './made-sheets.ts';
import { makeTerminal } from './made-terminal.ts';

const F = '```';
const GEARS = `# Gears

${F}table sets "Sets"
set,ratios
Four,"[3, 2, 1.4, 1]"
Five,"[3, 2, 1.4, 1, 0.8]"
${F}

${F}given
axle = 3.25 "Axle" from 2 to 5 to 0.01
other = 1 "Other" from 0 to 2
ratios = pick "Five" from sets.ratios "Gear set"
${F}

${F}work
speeds = 1000 rpm * axle * ratios "Speeds" as rpm to 10
top = last(speeds) "Top" as rpm to 10
gear = ordinals(ratios) "Gears"
round = (axle - 3) * (axle - 4) "Round" to 0.01
${F}

${F}find
axle so that top is 2500 rpm near [3.07, 3.73]
${F}
`;

function ask(...typed: readonly string[]) {
  const terminal = makeTerminal({ ...SHEETS, 'notebooks/gears.md': GEARS });
  const command = parseArguments(['find', ...typed]);
  if (command.command !== 'find') throw new Error(JSON.stringify(command));
  const code = find(command, terminal);
  return { code, out: terminal.out(), errors: terminal.errors() };
}

function record(...typed: readonly string[]): FindRecord {
  return JSON.parse(ask(...typed, '--json').out);
}

describe('an answer', () => {
  test('is exact, with sizes in stock beside it, nearest first', () => {
    // By hand: 1000 rpm × axle × 0.8 = 2400 rpm gives 3; with 3.07 it is 2456 rpm.
    const found = record('gears', 'top=2400', '--by', 'axle');
    expect(found.solutions).toEqual([
      { from: expect.closeTo(3, 9), to: expect.closeTo(3, 9), text: '3.000' },
    ]);
    expect(found.stocked.map(({ given }) => given)).toEqual([3.07, 3.73]);
    expect(found.stocked[0]!.result).toBeCloseTo(2456, 6);
    expect(found.target).toMatchObject({ unit: 'rpm', text: '2400 rpm' });
    expect(found.range).toEqual({ from: 2, to: 5, unit: '' });
    expect(found.problems).toEqual([]);
  });

  test('is every one of several', () => {
    const found = record('gears', 'round=0', '--by', 'axle');
    expect(found.solutions.map(({ text }) => text)).toEqual(['3.000', '4.000']);
  });

  test('names the element of a list', () => {
    const found = record('gears', 'speeds=3000', '--by', 'axle', '--element', '4TH');
    expect(found.solutions[0]!.from).toBeCloseTo(3, 9);
    expect(found.element).toBe('4th');
    expect(record('gears', 'speeds=3000', '--by', 'axle', '--element', '4').element).toBe('4th');
  });

  test('tells the nearest where there is none', () => {
    const { out, code } = ask('gears', 'top=9000', '--by', 'axle');
    expect(out).toMatch(/Nothing between 2.000 and 5.000 gives top 9000 rpm; nearest is 5.000/);
    expect(code).toBe(0);
  });

  test('says so where the result does not depend on it', () => {
    const found = record('gears', 'top=2400', '--by', 'other');
    expect(found.depends).toBe(false);
    expect(found.sentence).toMatch(/Top does not depend on other: it is 2600 rpm throughout/);
  });

  test('tries the rows of a table', () => {
    const found = record('gears', 'top=3000', '--by', 'ratios');
    expect(found.range).toBeNull();
    expect(found.stocked.map(({ name }) => name)).toEqual(['Four', 'Five']);
    expect(found.sentence).toMatch(
      /^Of the table, Four comes nearest to top 3000 rpm: it gives 3250 rpm/,
    );
  });

  test('follows readings that are typed with it', () => {
    const found = record('gears', 'top=2400', '--by', 'axle', '--given', 'ratios=Four');
    expect(found.solutions[0]!.from).toBeCloseTo(2.4, 9);
  });

  test('keeps to a range that is typed', () => {
    const found = record('gears', 'round=0', '--by', 'axle', '--from', '3.5', '--to', '5');
    expect(found.solutions).toHaveLength(1);
  });

  test('may go over a value that is carried from another sheet', () => {
    const found = record('20-wheel', 'wheel_speed=500 rpm', '--by', 'gear');
    expect(found.given).toBe('10-shaft/ratio');
    expect(found.solutions[0]!.from).toBeCloseTo(2, 9);
  });
});

describe('refused', () => {
  test.each([
    ['a target of another dimension', ['gears', 'top=3 in', '--by', 'axle'], 1, /Target: .*length/],
    ['a target of nothing', ['gears', 'top=', '--by', 'axle'], 1, /Type what the result should be/],
    [
      'a bad reading',
      ['gears', 'top=1', '--by', 'axle', '--given', 'other=x'],
      1,
      /--given other:1/,
    ],
    [
      'no such sheet',
      ['geras', 'top=1', '--by', 'axle'],
      2,
      /no sheet "geras"; did you mean gears/,
    ],
    ['no such result', ['gears', 'tops=1', '--by', 'axle'], 2, /has no "tops"; did you mean top/],
    [
      'no such reading',
      ['gears', 'top=1', '--by', 'axel'],
      2,
      /no reading "axel"; did you mean axle/,
    ],
    ['a result to be found', ['gears', 'top=1', '--by', 'round'], 2, /round is worked out/],
    [
      'a list without element',
      ['gears', 'speeds=1', '--by', 'axle'],
      2,
      /is a list; .*one of 1st, 2nd/,
    ],
    ['no such element', ['gears', 'speeds=1', '--by', 'axle', '--element', '9th'], 2, /not "9th"/],
    [
      'an element of one quantity',
      ['gears', 'top=1', '--by', 'axle', '--element', '1'],
      2,
      /is one quantity/,
    ],
  ] as const)('%s', (_, typed, code, words) => {
    const asked = ask(...typed);
    expect(asked.code).toBe(code);
    expect(asked.errors).toMatch(words);
    expect(asked.out).toBe('');
  });
});

test('a sheet with problems answers what it can and exits with 1', () => {
  const { code, out } = ask('broken', 'sound=8', '--by', 'width', '--from', '1', '--to', '9');
  expect(code).toBe(1);
  expect(out).toMatch(/Width 4.* gives sound 8.0 in/);
  expect(out).toMatch(/Problems\n.*broken\.md:\d+/);
});
