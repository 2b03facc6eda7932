import { describe, expect, test } from 'vitest';
import iso from '../../shared/fits/iso-286.json' with { type: 'json' };
import { testPublished } from '../support/published.ts';

testPublished('fits.json');

/** ISO 286-1, from memory, in micrometres, with D the geometric mean of the range in millimetres. */
function formulas(over: number, to: number) {
  const d = Math.sqrt(over * to);
  const unit = 0.45 * Math.cbrt(d) + 0.001 * d;
  return {
    it6: 10 * unit,
    it7: 16 * unit,
    g: -2.5 * d ** 0.34,
    f: -5.5 * d ** 0.41,
    k: 0.6 * Math.cbrt(d),
    n: 5 * d ** 0.34,
  };
}

describe('the table of ISO 286 against the formulas of ISO 286-1 (memory)', () => {
  const [small, large] = iso.ranges;

  test('over 30 to 50 mm they come to 15.6, 25.0, −8.67, −24.6, 2.03 and 17.3', () => {
    const found = Object.values(formulas(30, 50));
    const wanted = [15.6, 25.0, -8.67, -24.6, 2.03, 17.3];
    found.forEach((number, i) => {
      expect(Math.abs(number - wanted[i]!)).toBeLessThanOrEqual(
        i < 2 || i === 3 || i === 5 ? 0.05 : 0.005,
      );
    });
  });

  test('over 30 to 50 mm they round to the table', () => {
    const { it6, it7, g, f, k, n } = formulas(30, 50);
    const zones = large!.zones as Readonly<Record<string, readonly number[]>>;
    const span = (zone: string) => zones[zone]![0]! - zones[zone]![1]!;
    expect([span('g6'), span('k6'), span('n6'), span('p6'), span('s6')]).toEqual(
      Array(5).fill(Math.round(it6)),
    );
    expect([span('H7'), span('f7'), span('K7'), span('N7'), span('P7')]).toEqual(
      Array(5).fill(Math.round(it7)),
    );
    expect([zones.g6![0], zones.f7![0], zones.k6![1], zones.n6![1]]).toEqual(
      [g, f, k, n].map(Math.round),
    );
  });

  test('over 10 to 18 mm they come to 17.3 for IT7 where the table has 18: the table is used', () => {
    expect(formulas(10, 18).it7).toBeCloseTo(17.3, 1);
    expect(small!.zones.H7).toEqual([18, 0]);
  });

  test('a hole’s zone is the shaft’s of the same letter turned over, with the table’s own delta', () => {
    for (const { zones } of [small!, large!]) {
      const { k6, n6, p6, K7, N7, P7 } = zones as Partial<Record<string, number[]>>;
      expect(K7![0]! + k6![1]!).toBe(N7![0]! + n6![1]!);
      expect(N7![0]! + n6![1]!).toBe(P7![0]! + p6![1]!);
    }
  });
});
