import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CLUTCH_TORQUE_BY_PRESSURE, CLUTCH_TORQUE_BY_WEAR } from '../../src/trade/clutch-torque.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const wear = (...values: number[]) => runFunction(CLUTCH_TORQUE_BY_WEAR, ...values) as number;
const pressure = (...values: number[]) =>
  runFunction(CLUTCH_TORQUE_BY_PRESSURE, ...values) as number;

/** Torque of a lining cut into thin rings, with a pressure for each radius. */
function addRings(pressureAt: (r: number) => number, clamp: number, ro: number, ri: number) {
  const rings = 20_000;
  let [force, torque] = [0, 0];
  for (let i = 0; i < rings; i++) {
    const r = ri + ((i + 0.5) * (ro - ri)) / rings;
    force += pressureAt(r) * r;
    torque += pressureAt(r) * r * r;
  }
  return (clamp * torque) / force;
}

describe('against the lining cut into rings', () => {
  test('bedded in, pressure times radius is the same everywhere', () => {
    const rings = addRings((r) => 1 / r, 5000, 0.12, 0.08);
    expect(wear(2, 0.3, 5000, 0.24, 0.16)).toBeCloseTo(2 * 0.3 * rings, 6);
  });

  test('when new, the pressure is the same everywhere', () => {
    const rings = addRings(() => 1, 5000, 0.12, 0.08);
    expect(pressure(2, 0.3, 5000, 0.24, 0.16)).toBeCloseTo(2 * 0.3 * rings, 6);
  });
});

test('bedding in never adds torque, and takes a quarter at most', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 0.999, noNaN: true }), (inner) => {
      const ratio = wear(2, 0.3, 1000, 1, inner) / pressure(2, 0.3, 1000, 1, inner);
      expect(ratio).toBeLessThanOrEqual(1 + 1e-12);
      expect(ratio).toBeGreaterThanOrEqual(0.75 - 1e-12);
    }),
  );
});

test.each([
  ['as wide inside as outside', 0.2, 0.2, 'smaller than the outer'],
  ['wider inside than outside', 0.2, 0.3, 'smaller than the outer'],
  ['with less than no hole', 0.2, -0.1, 'not below 0'],
  ['of no size at all', 0, 0, 'smaller than the outer'],
])('a lining %s is refused', (_, outer, inner, words) => {
  for (const declaration of [CLUTCH_TORQUE_BY_WEAR, CLUTCH_TORQUE_BY_PRESSURE]) {
    expect(refusalOf(declaration, 2, 0.3, 1000, outer, inner)).toContain(words);
  }
});

test('a friction that no dry lining has is told, and worked all the same', () => {
  const outside = (friction: number | Float64Array) =>
    CLUTCH_TORQUE_BY_WEAR.outside!(2, friction, 1000, 0.2, 0.1);
  expect(outside(0.3)).toBeUndefined();
  expect(outside(0.1)).toContain('friction of 0.1 is not');
  expect(outside(Float64Array.of(0.3, 0.6))).toContain('friction of 0.6 is not');
  expect(wear(2, 0.1, 1000, 0.2, 0.1)).toBeGreaterThan(0);
});
