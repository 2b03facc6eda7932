import { deviation, mean, quantile } from 'd3-array';
import { expect, test } from 'vitest';
import { describeSamples } from '../../../src/sheet/spread/distribution.ts';

const even = Float64Array.from({ length: 1001 }, (_, i) => i / 1000);

test('mean, deviation and quantiles are those of a library', () => {
  const found = describeSamples(even);
  expect(found.mean).toBeCloseTo(mean(even)!, 12);
  expect(found.u).toBeCloseTo(deviation(even)!, 12);
  expect(found.symmetric[0]).toBeCloseTo(quantile(even, 0.025)!, 12);
  expect(found.symmetric[1]).toBeCloseTo(quantile(even, 0.975)!, 12);
});

test('the shortest range of a lopsided distribution starts at its steep side', () => {
  const found = describeSamples(even.map((x) => x * x));
  expect(found.shortest[0]).toBe(0);
  expect(found.shortest[1]).toBeLessThan(found.symmetric[1]);
});

test('bins hold every sample, their edges meet', () => {
  const { bins } = describeSamples(even);
  expect(bins.reduce((sum, { count }) => sum + count, 0)).toBe(1001);
  bins.slice(1).forEach((bin, i) => {
    expect(bin.from).toBeCloseTo(bins[i]!.to, 12);
  });
});

test('samples without a value are counted apart', () => {
  const found = describeSamples(Float64Array.of(1, Number.NaN, 3));
  expect([found.samples, found.missing, found.mean]).toEqual([2, 1, 2]);
});

test('equal samples make one bin', () => {
  expect(describeSamples(Float64Array.of(2, 2, 2)).bins).toEqual([{ from: 2, to: 2, count: 3 }]);
});
