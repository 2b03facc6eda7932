import { expect, test } from 'vitest';
import { runSimulation, simulate } from '../../../src/sheet/spread/simulate.ts';
import { cellIndex, openText, work } from '../../support/notebooks.ts';

const SHEET = [
  '```given',
  'p = 3 ± 0.3',
  'q = 5.01; 5.02; 4.98',
  '```',
  '',
  '```work',
  'total = p + 2 * q - p / q',
  'branch = if p > 3 then total else -total',
  'several = [1, 2] * p',
  'largest = max(several)',
  'root = sqrt(p - 3)',
  'carried = largest + 0 * total',
  '```',
].join('\n');
const worked = work(openText(SHEET), 'made');

function run(name: string, seed = 0.5, element = 0) {
  const index = cellIndex(worked.book, 'made', name);
  return runSimulation(worked.book, worked.frame, index, { samples: 5000, seed, element });
}

test('the same seed gives the same samples, another seed others', () => {
  expect(run('total')).toEqual(run('total'));
  expect(run('total', 0.25)).not.toEqual(run('total'));
});

test('samples come in whole blocks', () => {
  expect(run('total')).toHaveLength(5120);
});

test('rectangular draws stay inside their limits and reach for them', () => {
  const samples = run('several');
  expect(Math.min(...samples)).toBeGreaterThanOrEqual(2.7);
  expect(Math.max(...samples)).toBeLessThanOrEqual(3.3);
  expect(Math.min(...samples)).toBeLessThan(2.71);
  expect(Math.max(...samples)).toBeGreaterThan(3.29);
});

test('an element of a list is simulated by its place', () => {
  const [first, second] = [run('several'), run('several', 0.5, 1)];
  expect(second.every((x, i) => Math.abs(x - 2 * first[i]!) < 1e-12)).toBe(true);
});

test('branches are worked sample by sample with the same draws', () => {
  const [total, branch] = [run('total'), run('branch')];
  expect(branch.every((x, i) => Math.abs(Math.abs(x) - Math.abs(total[i]!)) < 1e-12)).toBe(true);
  expect(branch.some((x) => x < 0) && branch.some((x) => x > 0)).toBe(true);
});

test('functions of whole lists are simulated too', () => {
  expect(run('largest')).toEqual(run('several', 0.5, 1));
});

test('a draw without a result is NaN, not a number made up', () => {
  const samples = run('root');
  const missing = samples.filter(Number.isNaN).length / samples.length;
  expect(missing).toBeGreaterThan(0.45);
  expect(missing).toBeLessThan(0.55);
});

test('progress rises to one, and a run can be stopped between blocks', () => {
  const index = cellIndex(worked.book, 'made', 'total');
  const steps = simulate(worked.book, worked.frame, index, { samples: 3000, seed: 1 });
  const shares = [steps.next(), steps.next(), steps.next()].map(({ value }) => value);
  expect(shares).toEqual([1 / 3, 2 / 3, 1]);
  expect(
    simulate(worked.book, worked.frame, index, { samples: 3000, seed: 1 }).return(
      new Float64Array(),
    ).done,
  ).toBe(true);
});

test('the frame itself stays as it was', () => {
  const before = worked.frame.memory.numbers.slice();
  run('branch');
  expect(worked.frame.memory.numbers).toEqual(before);
});
