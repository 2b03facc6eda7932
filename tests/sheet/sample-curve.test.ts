import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Sample, sampleCurve } from '../../src/sheet/sample-curve.ts';

const one = (curve: (x: number) => number) => (x: number) => [curve(x)];

/** The curve as it is drawn: along straight lines between the samples. */
function drawnAt(samples: readonly Sample[], x: number): number {
  const i = Math.max(
    1,
    samples.findIndex((sample) => sample.x >= x),
  );
  const [a, b] = [samples[i - 1]!, samples[i]!];
  const share = b.x === a.x ? 0 : (x - a.x) / (b.x - a.x);
  return a.ys[0]! + share * (b.ys[0]! - a.ys[0]!);
}

test('a straight line needs no more than the even steps', () => {
  expect(
    sampleCurve(
      one((x) => 3 * x),
      0,
      10,
    ),
  ).toHaveLength(121);
});

test('a line that stays where it is needs no more either', () => {
  expect(
    sampleCurve(
      one(() => 7),
      0,
      10,
    ),
  ).toHaveLength(121);
});

test('samples run from end to end, each further along than the one before', () => {
  const xs = sampleCurve(
    one((x) => Math.abs(x - 0.3)),
    -1,
    1,
  ).map(({ x }) => x);
  expect([xs[0], xs.at(-1)]).toEqual([-1, 1]);
  expect(xs.slice(1).every((x, i) => x > xs[i]!)).toBe(true);
});

test('a corner is found between two even steps', () => {
  const samples = sampleCurve(
    one((x) => Math.abs(x - 1 / 3)),
    0,
    1,
  );
  const lowest = Math.min(...samples.map(({ ys }) => ys[0]!));
  expect(lowest).toBeLessThan(1e-3);
});

test('the tip of a peak between straight sides is met, wherever it stands', () => {
  const tip = fc.double({ min: 0.05, max: 0.95, noNaN: true });
  const slope = fc.double({ min: 0.1, max: 10, noNaN: true });
  fc.assert(
    fc.property(tip, slope, slope, fc.constantFrom(1, -1), (at, left, right, sign) => {
      const roof = (x: number) => sign * (5 - (x < at ? left * (at - x) : right * (x - at)));
      const samples = sampleCurve(one(roof), 0, 1);
      const best = Math.max(...samples.map(({ ys }) => sign * ys[0]!));
      expect(best).toBeCloseTo(5, 9);
      expect(samples.slice(1).every(({ x }, i) => x > samples[i]!.x)).toBe(true);
    }),
  );
});

test('the two sides of a jump stand too close to see', () => {
  const samples = sampleCurve(
    one((x) => (x < 1 / 3 ? 0 : 1)),
    0,
    1,
  );
  const i = samples.findIndex(({ ys }) => ys[0] === 1);
  expect(samples[i]!.x - samples[i - 1]!.x).toBeLessThan(1e-6);
});

test('the place where a line ends is found as closely', () => {
  const samples = sampleCurve(
    one((x) => (x > 0.7 ? Number.NaN : x)),
    0,
    1,
  );
  const last = samples.filter(({ ys }) => !Number.isNaN(ys[0])).at(-1)!;
  expect(0.7 - last.x).toBeLessThan(1e-6);
});

test('a curve without any value is sampled at the even steps, and holds nothing', () => {
  const samples = sampleCurve(
    one(() => Number.NaN),
    0,
    1,
  );
  expect(samples).toHaveLength(121);
  expect(samples.every(({ ys }) => Number.isNaN(ys[0]))).toBe(true);
});

test('of several lines each is followed, and one that has fewer has ended', () => {
  const samples = sampleCurve((x) => (x < 0.5 ? [x, Math.abs(x - 0.2)] : [x]), 0, 1);
  const before = samples.filter(({ ys }) => ys.length === 2).at(-1)!;
  expect(0.5 - before.x).toBeLessThan(1e-6);
});

test('a curve that jumps all the time comes to an end', () => {
  let turn = 0;
  const restless = () => {
    turn += 1;
    return [turn % 2];
  };
  expect(sampleCurve(restless, 0, 1).length).toBeLessThanOrEqual(121 + 3000);
});

test('a range of no width is one place, sampled over and over', () => {
  expect(
    new Set(
      sampleCurve(
        one((x) => x),
        2,
        2,
      ).map(({ x }) => x),
    ),
  ).toEqual(new Set([2]));
});

test('any smooth curve is drawn to within a thousandth of its height', () => {
  const curve = fc.constantFrom<(x: number) => number>(
    Math.exp,
    Math.sin,
    (x) => x ** 3 - x,
    (x) => 1 / (x + 1.2),
    (x) => Math.sqrt(x + 1),
    (x) => 1 / (1 + 25 * x * x),
  );
  fc.assert(
    fc.property(curve, fc.double({ min: -0.99, max: 0.99, noNaN: true }), (work, x) => {
      const samples = sampleCurve(one(work), -1, 1);
      const ys = samples.map(({ ys: [y] }) => y!);
      const height = Math.max(...ys) - Math.min(...ys);
      expect(Math.abs(drawnAt(samples, x) - work(x))).toBeLessThan(1e-3 * height);
    }),
  );
});
