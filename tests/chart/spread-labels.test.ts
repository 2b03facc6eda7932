import fc from 'fast-check';
import { expect, test } from 'vitest';
import { spreadLabels } from '../../src/chart/spread-labels.ts';

const labels = (...middles: readonly number[]) => middles.map((middle) => ({ middle, height: 20 }));

test('labels with room stand where they wish', () => {
  expect(spreadLabels(labels(50, 100, 20), 0, 200)).toEqual([50, 100, 20]);
});

test('labels that would overlap part evenly', () => {
  expect(spreadLabels(labels(50, 54), 0, 200)).toEqual([42, 62]);
});

test('labels at the edge are kept inside', () => {
  expect(spreadLabels(labels(0, 5, 200), 0, 200)).toEqual([10, 30, 190]);
});

test('labels of one wish stand in their order', () => {
  expect(spreadLabels(labels(50, 50, 50), 0, 200)).toEqual([30, 50, 70]);
});

test('too many labels run over the end and still not over each other', () => {
  expect(spreadLabels(labels(5, 5, 5), 0, 30)).toEqual([10, 30, 50]);
});

test('no two labels ever overlap', () => {
  const any = fc.array(
    fc.record({ middle: fc.integer({ min: -50, max: 350 }), height: fc.constantFrom(17, 34) }),
    {
      maxLength: 15,
    },
  );
  fc.assert(
    fc.property(any, (wishes) => {
      const spans = spreadLabels(wishes, 0, 300)
        .map((middle, i) => ({
          top: middle - wishes[i]!.height / 2,
          foot: middle + wishes[i]!.height / 2,
        }))
        .sort((a, b) => a.top - b.top);
      for (const [i, span] of spans.entries())
        if (i > 0) expect(span.top).toBeGreaterThanOrEqual(spans[i - 1]!.foot - 1e-6);
    }),
  );
});
