import { describe, expect, test } from 'vitest';
import { run } from '../../src/cli/main.ts';
import type { SolveRecord } from '../../src/cli/solve-record.ts';
import { SHEETS } from './made-sheets.ts';
import { makeTerminal } from './made-terminal.ts';

interface Solved {
  readonly code: number;
  readonly record: SolveRecord;
}

async function solve(sheet: string, ...givens: readonly string[]): Promise<Solved> {
  const terminal = makeTerminal(SHEETS);
  const options = givens.flatMap((given) => ['--given', given]);
  const code = await run(['solve', sheet, '--json', ...options], terminal);
  return { code, record: JSON.parse(terminal.out()) };
}

describe('the results', () => {
  test('hold the value in the unit of the sheet and the text of the page', async () => {
    const { code, record } = await solve('10-shaft', 'ratio=3');
    expect(code).toBe(0);
    expect(record.sheet).toBe('10-shaft');
    expect(record.results.out).toEqual({
      value: expect.closeTo(2000 / 3, 9),
      unit: 'rpm',
      text: '667 rpm',
    });
  });

  test('are all there, in the order of the sheet', async () => {
    const { record } = await solve('10-shaft');
    expect(Object.keys(record.results)).toEqual(['out', 'steps', 'room', 'more_room', 'off']);
  });

  test('of a list are a list', async () => {
    const { record } = await solve('10-shaft');
    expect(record.results.steps).toEqual({ value: [2.5, 5], unit: '', text: '[2.5, 5.0]' });
  });

  test('tell what their sign means', async () => {
    const { record } = await solve('10-shaft', 'ratio=3');
    expect(record.results.off).toMatchObject({
      value: 0.5,
      text: expect.stringMatching(/Too high/),
    });
  });

  test('without a value say what they wait for, and a blank reading is no problem', async () => {
    const { code, record } = await solve('10-shaft');
    expect(code).toBe(0);
    expect(record.problems).toEqual([]);
    expect(record.results.room).toEqual({
      value: null,
      unit: 'mm',
      text: 'waits for spare, which is blank',
    });
    expect(record.results.more_room).toMatchObject({
      value: null,
      unit: 'mm',
      text: expect.stringMatching(/^waits for .*spare.*, which is blank$/),
    });
  });

  test('come when the reading comes', async () => {
    const { record } = await solve('10-shaft', 'spare=1 cm');
    expect(record.results.more_room).toMatchObject({ value: expect.closeTo(24, 9) });
  });

  test('come back to waiting when a reading is taken out', async () => {
    const { code, record } = await solve('10-shaft', 'ratio=');
    expect(code).toBe(0);
    expect(record.results.out?.text).toBe('waits for ratio, which is blank');
  });
});

describe('a value carried from another sheet', () => {
  test('is entered on the sheet that it is carried to', async () => {
    const { code, record } = await solve('20-wheel', 'gear=4');
    expect(code).toBe(0);
    expect(record.results.wheel_speed).toMatchObject({ value: expect.closeTo(250, 9) });
  });

  test('travels over two sheets', async () => {
    const { record } = await solve('30-car');
    expect(record.results.half).toMatchObject({ value: expect.closeTo(200, 9) });
  });

  test('that is a result there cannot be entered', async () => {
    const { code, record } = await solve('20-wheel', 'shaft_speed=4 rpm');
    expect(code).toBe(1);
    expect(record.problems).toMatchObject([
      {
        code: 'entered-result',
        message: expect.stringMatching(/^shaft_speed is worked out on sheet 10-shaft/),
      },
    ]);
  });

  test('shows its failure on the sheet that it came from', async () => {
    const { record } = await solve('20-wheel', 'gear=0');
    expect(record.problems).toMatchObject([
      { code: 'waiting', cell: 'shaft_speed', place: 'notebooks/20-wheel.md:6:8' },
      { code: 'waiting', cell: 'wheel_speed' },
      { code: 'division-by-zero', cell: '10-shaft/out', place: expect.stringMatching(/10-shaft/) },
    ]);
  });
});

describe('the checks', () => {
  test.each([
    ['ratio=2.5', 'pass', /./],
    ['ratio=5', 'fail', /Too slow\.$/],
    ['ratio=2', 'fail', /Too fast\.$/],
    ['ratio=', 'unknown', /ratio, which is blank/],
  ])('with %s: %s', async (given, verdict, text) => {
    const { code, record } = await solve('10-shaft', given);
    expect(code).toBe(0);
    expect(record.checks).toMatchObject([
      { name: 'out', verdict, text: expect.stringMatching(text) },
      { name: 'room', verdict: 'unknown', text: expect.stringMatching(/spare, which is blank/) },
    ]);
  });
});

describe('the problems', () => {
  test.each([
    ['rato=3', 'unknown-given', 'rato', 1, /has no given called rato; did you mean ratio\?/],
    ['out=3', 'entered-result', 'out', 1, /out is worked out on sheet 10-shaft/],
    ['spin=3 in', 'entry-dimension', 'spin', 1, /length.*turning speed/],
    ['spin=12 rpm + x', 'name-in-entry', 'spin', 10, /"x"/],
    ['spin=12 rmp', 'unknown-unit', 'spin', 4, /rpm/],
    ['sizes=[1, 2', 'unreadable-entry', 'sizes', 1, /closing bracket/],
  ])('%s is refused, and the rest is worked', async (given, code, name, column, message) => {
    const solved = await solve('10-shaft', given);
    expect(solved.code).toBe(1);
    expect(solved.record.problems[0]).toEqual({
      code,
      message: expect.stringMatching(message),
      cell: name,
      place: `--given ${name}:1:${column}`,
    });
    expect(solved.record.results.steps).toMatchObject({ value: [2.5, 5] });
  });

  test('name what waits for an entry that was refused', async () => {
    const { record } = await solve('10-shaft', 'ratio=x');
    expect(record.problems.map(({ code, cell }) => `${cell}: ${code}`)).toEqual([
      'ratio: name-in-entry',
      'out: waiting',
      'steps: waiting',
      'off: waiting',
    ]);
  });

  test('tell of a reading that is named twice; the first counts', async () => {
    const { code, record } = await solve('10-shaft', 'ratio=4', 'ratio=5');
    expect(code).toBe(1);
    expect(record.problems).toEqual([
      {
        code: 'entered-twice',
        message: 'ratio is entered twice; keep one of the entries',
        cell: 'ratio',
        place: '--given ratio:1:1',
      },
    ]);
    expect(record.results.out?.value).toBeCloseTo(500, 9);
  });

  test('tell of a division by zero at its place, and of what waits for it', async () => {
    const { code, record } = await solve('10-shaft', 'ratio=0');
    expect(code).toBe(1);
    expect(record.problems[0]).toEqual({
      code: 'division-by-zero',
      message: 'division by zero: ratio is 0',
      cell: 'out',
      place: expect.stringMatching(/^notebooks\/10-shaft\.md:11:/),
    });
  });

  test('of a broken sheet come once each, and what is sound is worked', async () => {
    const { code, record } = await solve('broken');
    expect(code).toBe(1);
    expect(record.problems).toMatchObject([
      { code: 'dimension-mismatch', cell: 'wrong', place: expect.stringMatching(/broken\.md:8:/) },
      { code: 'waiting', cell: 'after', place: expect.stringMatching(/broken\.md:9:/) },
    ]);
    expect(record.results).toMatchObject({
      wrong: { value: null },
      after: { value: null },
      sound: { value: expect.closeTo(6, 9), unit: 'in' },
    });
  });
});

describe('for people', () => {
  test('results, checks and problems stand in aligned lines', async () => {
    const terminal = makeTerminal(SHEETS);
    expect(await run(['solve', '10-shaft', '--given', 'spare=1'], terminal)).toBe(0);
    const lines = terminal.out().split('\n');
    expect(lines).toContain('  Out        800 rpm');
    expect(lines).toContain('  More room  6.0 mm');
    expect(terminal.out()).toMatch(/^Shaft\n\nResults\n[\s\S]*\n\nChecks\n/);
    expect(terminal.out()).not.toContain('Problems');
  });

  test('a problem is printed with its place', async () => {
    const terminal = makeTerminal(SHEETS);
    expect(await run(['solve', 'broken'], terminal)).toBe(1);
    expect(terminal.out()).toMatch(/\nProblems\n {2}notebooks\/broken\.md:8:\d+: cannot add /);
  });
});

test('a sheet that is not there is wrong use', async () => {
  const terminal = makeTerminal(SHEETS);
  expect(await run(['solve', '10-shat'], terminal)).toBe(2);
  expect(terminal.out()).toBe('');
  expect(terminal.errors()).toMatch(/no sheet "10-shat"; did you mean 10-shaft\?/);
});
