import { describe, expect, test } from 'vitest';
import { createPullLine } from '../../src/trade/pull-line.ts';
import { createRun, LONGEST_RUN, type Runner } from '../../src/trade/run.ts';

const DRIVE = {
  speeds: Float64Array.of(100, 300, 500),
  torques: Float64Array.of(120, 200, 160),
  limit: 500,
  launchSpeed: 0,
  multiplication: 1,
  slip: 0,
};
const RUNNER: Runner = {
  lines: [10, 5].map((turns) => createPullLine(DRIVE, turns)),
  leaveAt: [45, 100],
  masses: [1100, 1000],
  load: { rolling: 100, air: 0.2, doublesAt: 45 },
  grip: 1e9,
  shiftTime: 0.6,
};
const last = (numbers: readonly number[]) => numbers[numbers.length - 1]!;

describe('the record of a run', () => {
  const run = createRun(RUNNER);

  test('begins at rest and ends after a minute', () => {
    expect([run.times[0], run.speeds[0], run.distances[0]]).toEqual([0, 0, 0]);
    expect(last(run.times)).toBeCloseTo(LONGEST_RUN, 9);
  });

  test('has as many figures in each column, and times and distances that never fall', () => {
    const lengths = Object.values(run).map((column: readonly number[]) => column.length);
    expect(new Set(lengths).size).toBe(1);
    run.times.slice(1).forEach((time, i) => {
      expect(time).toBeGreaterThan(run.times[i]!);
      expect(run.distances[i + 1]!).toBeGreaterThanOrEqual(run.distances[i]!);
    });
  });

  test('leaves a gear at its very speed, then rolls without drive', () => {
    const shift = run.speeds.indexOf(45);
    expect(shift).toBeGreaterThan(0);
    const back = run.times.findIndex((time) => time >= run.times[shift]! + 0.6 - 1e-9);
    expect(run.starts.slice(shift + 1, back + 1).every((rate) => rate < 0)).toBe(true);
    expect(run.starts[back + 1]!).toBeGreaterThan(0);
  });

  test('shows the jump of the acceleration at a shift on both its sides', () => {
    const shift = run.speeds.indexOf(45);
    expect(run.ends[shift]!).toBeGreaterThan(0);
    expect(run.starts[shift + 1]!).toBeLessThan(0);
  });
});

test('steps half as long move no speed by more than ten parts in a million', () => {
  const [coarse, fine] = [createRun(RUNNER), createRun(RUNNER, 0.05)];
  expect(last(coarse.distances) / last(fine.distances)).toBeCloseTo(1, 5);
  expect(last(coarse.speeds) / last(fine.speeds)).toBeCloseTo(1, 5);
});

test('on a level pull against the air the error falls as the fourth power of the step', () => {
  const level: Runner = {
    ...RUNNER,
    lines: [{ speeds: [0, 100], pulls: [2000, 2000] }],
    leaveAt: [100],
    masses: [1000],
    load: { rolling: 0, air: 1, doublesAt: 45 },
  };
  const terminal = Math.sqrt(2000);
  const exact = terminal * Math.tanh((2 * LONGEST_RUN) / terminal / 6);
  const miss = (step: number) => {
    const run = createRun(level, step);
    const at = run.times.findIndex((time) => Math.abs(time - LONGEST_RUN / 6) < 1e-9);
    return Math.abs(run.speeds[at]! - exact);
  };
  expect(miss(1) / miss(0.5)).toBeGreaterThan(12);
  expect(miss(1) / miss(0.5)).toBeLessThan(20);
});

test('a shift long enough to stop the car leaves it at rest', () => {
  const run = createRun({
    ...RUNNER,
    leaveAt: [1, 100],
    shiftTime: 20,
    load: { ...RUNNER.load, rolling: 300 },
  });
  expect(Math.min(...run.speeds)).toBe(0);
  expect(last(run.speeds)).toBeGreaterThan(0);
});

test('a car that cannot pull away stays where it is', () => {
  const run = createRun({ ...RUNNER, load: { ...RUNNER.load, rolling: 1e5 } });
  expect(last(run.distances)).toBe(0);
  expect(last(run.times)).toBeCloseTo(LONGEST_RUN, 9);
});

test('a gear that is left at once is only passed through', () => {
  const run = createRun({ ...RUNNER, leaveAt: [0, 100], shiftTime: 0 });
  expect(run.starts[1]).toBeCloseTo((600 - 100) / 1000, 12);
});
