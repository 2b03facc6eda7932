import { describe, expect, test } from 'vitest';
import { compare } from '../../src/cli/compare.ts';
import type { CompareRecord } from '../../src/cli/compare-record.ts';
import { parseArguments } from '../../src/cli/parse-arguments.ts';
import { formatJob } from '../../src/job/read-job.ts';
import { NEW_JOB } from '../../src/job/record.ts';
import { withBase, withDifference, withVariant } from '../../src/job/variants.ts';
import { SHEETS } from './made-sheets.ts';
import { makeTerminal } from './made-terminal.ts';

const STORED = withDifference(withVariant(NEW_JOB, 'Stored'), 'Stored', '10-shaft', 'ratio', '2');
const FILES = {
  ...SHEETS,
  'job.json': formatJob(STORED),
  'lost.json': formatJob(withBase(STORED, 'Stored', 'gone')),
  'torn.json': '{"app"',
};

function run(...typed: readonly string[]) {
  const terminal = makeTerminal(FILES);
  const command = parseArguments(['compare', ...typed]);
  if (command.command !== 'compare') throw new Error(JSON.stringify(command));
  const code = compare(command, terminal);
  return { code, out: terminal.out(), errors: terminal.errors() };
}

function record(...typed: readonly string[]): CompareRecord {
  return JSON.parse(run(...typed, '--json').out);
}

describe('columns', () => {
  test('the sheet as it is stands first, each proposal beside it', () => {
    // By hand: 2000 rpm / 2.5, / 2 and / 5.
    const { columns, results } = record(
      '10-shaft',
      '--with',
      'Low: ratio=2',
      '--with',
      'High: ratio=5',
    );
    expect(columns.map(({ name }) => name)).toEqual(['As it is', 'Low', 'High']);
    expect(results.out).toEqual({
      label: 'Out',
      unit: 'rpm',
      values: [expect.closeTo(800, 9), expect.closeTo(1000, 9), expect.closeTo(400, 9)],
      texts: ['800 rpm', '1000 rpm', '400 rpm'],
      differences: [null, '+200 rpm, 25 % more', '−400 rpm, 50 % less'],
      differs: true,
    });
  });

  test('a reading is the same in all of them', () => {
    const { results } = record('10-shaft', '--with', 'Low: ratio=2', '--given', 'spin=1000 rpm');
    expect(results.out!.texts).toEqual(['400 rpm', '500 rpm']);
  });

  test('a proposal may change what is carried from another sheet', () => {
    const { results } = record('20-wheel', '--with', 'Low: gear=2');
    expect(results.wheel_speed!.texts).toEqual(['400 rpm', '500 rpm']);
  });

  test('commas inside an entry belong to it', () => {
    const { columns } = record('10-shaft', '--with', 'Many: sizes=[1, 2, 3] mm, ratio=2');
    expect(columns[1]!.problems).toEqual([]);
  });

  test('two proposals of one name are told apart', () => {
    const { columns } = record('10-shaft', '--with', 'A: ratio=2', '--with', 'A: ratio=3');
    expect(columns.map(({ name }) => name)).toEqual(['As it is', 'A', 'A 2']);
  });

  test('those of a job file come with it', () => {
    const { columns, results } = record('10-shaft', '--job', 'job.json', '--results', 'out');
    expect(columns.map(({ name }) => name)).toEqual(['As it is', 'Stored']);
    expect(Object.keys(results)).toEqual(['out']);
    expect(results.out!.texts[1]).toBe('1000 rpm');
  });
});

test('lines for people tell what differs, and what does not', () => {
  const { out, code } = run('10-shaft', '--with', 'Low: ratio=2', '--results', 'out,room');
  expect(code).toBe(0);
  expect(out).toContain('Out\n  As it is  800 rpm\n  Low       1000 rpm  (+200 rpm, 25 % more)\n');
  expect(out).toMatch(/The same in every column\n {2}Room: waits for spare/);
});

describe('what is wrong', () => {
  test.each([
    ['an entry that cannot be read', ['10-shaft', '--with', 'A: ratio=x'], /A: Ratio: /],
    [
      'a reading that is not there',
      ['10-shaft', '--with', 'A: ratoi=2'],
      /no "ratoi"; did you mean ratio/,
    ],
    [
      'a base that is gone',
      ['10-shaft', '--job', 'lost.json'],
      /builds on "gone", which is no longer there/,
    ],
  ])('%s is told, and the rest compared', (_, typed, words) => {
    const { code, out } = run(...typed);
    expect(code).toBe(1);
    expect(out).toMatch(words);
    expect(out).toMatch(/waits for spare/);
  });

  test.each([
    ['no such file', ['10-shaft', '--job', 'no.json'], 2, /no file "no.json"/],
    ['a file that is no job', ['10-shaft', '--job', 'torn.json'], 2, /torn\.json: /],
    [
      'no such result',
      ['10-shaft', '--with', 'A: ratio=2', '--results', 'outt'],
      2,
      /has no "outt"; did you mean out/,
    ],
    ['no such sheet', ['11-shaft', '--with', 'A: ratio=2'], 2, /did you mean 10-shaft/],
    ['a bad reading', ['10-shaft', '--with', 'A: ratio=2', '--given', 'spin=x'], 1, /--given spin/],
  ] as const)('%s is refused', (_, typed, code, words) => {
    const refused = run(...typed);
    expect(refused.code).toBe(code);
    expect(refused.errors).toMatch(words);
    expect(refused.out).toBe('');
  });
});
