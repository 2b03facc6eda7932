import { describe, expect, test } from 'vitest';
import type { Spread } from '../../../src/sheet/spread/spread.ts';
import {
  describeConfidence,
  describeRange,
  describeShares,
  describeSpread,
} from '../../../src/sheet/spread/spread-words.ts';

const WRITING = {
  show: (value: number) => `${Number(value.toFixed(4))} in`,
  name: (cell: number) => ['finger reading', 'bearing reading', 'straightedge'][cell]!,
};

const SPREAD: Spread = {
  value: 0.162,
  worst: { from: 0.156, to: 0.168, method: 'corners' },
  likely: { from: 0.157, to: 0.167, u: 0.0025, dof: 50 },
  shares: [],
  straight: true,
};

const spread = (more: Partial<Spread>): Spread => ({ ...SPREAD, ...more });
const shared = (...shares: readonly number[]) =>
  spread({ shares: shares.map((share, cell) => ({ cell, share, effect: 1 })) });

describe('how sure a result is', () => {
  test.each([
    ['alike on both sides', SPREAD, 'worst case ± 0.006 in · likely ± 0.005 in'],
    [
      'more on one side',
      spread({ worst: { from: 0.16, to: 0.168, method: 'corners' } }),
      'worst case 0.16 in to 0.168 in · likely ± 0.005 in',
    ],
    [
      'searched for',
      spread({ worst: { ...SPREAD.worst, method: 'search' } }),
      'worst case ± 0.006 in (searched for, since it turns on the way) · likely ± 0.005 in',
    ],
    [
      'bent',
      spread({ straight: false }),
      'worst case ± 0.006 in; it bends too much for a likely range: simulate it',
    ],
    [
      'without a value at places',
      spread({ straight: false, worst: { ...SPREAD.worst, gap: true } }),
      'worst case ± 0.006 in where it has a value at all; it bends too much for a likely range: simulate it',
    ],
  ])('%s', (_, found, words) => {
    expect(describeSpread(found, WRITING)).toBe(words);
  });
});

test.each([
  [{ from: -1, to: 1 }, '± 1 in'],
  [{ from: 0, to: 0 }, '± 0 in'],
  [{ from: -1, to: 1.01 }, '± 1.005 in'],
  [{ from: -1, to: 1.1 }, '-1 in to 1.1 in'],
  [{ from: 0, to: 1 }, '0 in to 1 in'],
])('a range about 0 of %j is told as %s', (range, words) => {
  expect(describeRange(0, range, WRITING.show)).toBe(words);
});

test('an end that a search leaves a hair beside nought is told as nought', () => {
  expect(describeRange(0.19, { from: 8.3e-7, to: 0.575 }, String)).toBe('0 to 0.575');
  expect(describeRange(-0.19, { from: -0.575, to: -8.3e-7 }, String)).toBe('-0.575 to 0');
  expect(describeRange(0.19, { from: 0.01, to: 0.575 }, String)).toBe('0.01 to 0.575');
});

describe('whose doubt it is', () => {
  // Halving a share s leaves the root of 1 − 3 s / 4 of the likely range of ± 0.005.
  test.each([
    [[1], 'All of the doubt is finger reading; halve it and the result is sure to ± 0.0025 in.'],
    [
      [0.9, 0.1],
      'Nine tenths of the doubt is finger reading; halve it and the result is sure to ± 0.0029 in.',
    ],
    [
      [0.67, 0.33],
      'Two thirds of the doubt is finger reading; halve it and the result is sure to ± 0.0035 in.',
    ],
    [
      [0.1, 0.05],
      'A small part of the doubt is finger reading; halve it and the result is sure to ± 0.0048 in.',
    ],
    [
      [0.5, 0.5],
      'Finger reading and bearing reading share the doubt equally; halve one of them and the result is sure to ± 0.004 in.',
    ],
    [
      [0.34, 0.33, 0.33],
      'A third of the doubt is finger reading; halve it and the result is sure to ± 0.0043 in.',
    ],
  ])('%j', (shares, words) => {
    expect(describeShares(shared(...shares), WRITING)).toBe(words);
  });

  test('nobody’s, or not to be told where the result bends', () => {
    expect(describeShares(SPREAD, WRITING)).toBe('');
    expect(describeShares({ ...shared(1), straight: false }, WRITING)).toBe('');
  });
});

describe('what a check says under doubt', () => {
  test.each([
    ['surely-pass', 1, 'Inside whatever the readings are within their tolerance.'],
    ['likely-pass', 0.9755, 'Likely inside (97.6 %), though not in the worst case.'],
    ['likely-pass', 0.99999, 'Likely inside (99.9 %), though not in the worst case.'],
    ['cannot-tell', 0.5, 'Cannot be told with this measuring: inside with a probability of 50 %.'],
    [
      'cannot-tell',
      Number.NaN,
      'Cannot be told: within the doubt of the readings it bends, jumps or has no value.',
    ],
    ['likely-fail', 0.031, 'Likely outside (inside with only 3.1 %).'],
    ['surely-fail', 0, 'Outside whatever the readings are within their tolerance.'],
  ] as const)('%s at %d', (verdict, inside, words) => {
    expect(describeConfidence({ verdict, inside })).toBe(words);
  });
});
