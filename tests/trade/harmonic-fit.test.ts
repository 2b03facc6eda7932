import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countPositions, fitHarmonics } from '../../src/trade/harmonic-fit.ts';

const DEGREE = Math.PI / 180;
const spaced = (n: number) => Array.from({ length: n }, (_, i) => (i * 2 * Math.PI) / n);
const shape = (offset: number, toward: number, oval: number, along: number) => (angle: number) =>
  5 + offset * Math.cos(angle - toward) + oval * Math.cos(2 * (angle - along));

describe('positions', () => {
  test.each([
    ['none', [], 0],
    ['one', [30], 1],
    ['the same one three times', [30, 30, 390], 1],
    ['two', [0, 180], 2],
    ['nought and a whole turn', [0, 360, 90], 2],
    ['eight', [0, 45, 90, 135, 180, 225, 270, 315], 8],
  ])('%s are counted', (_, degrees, count) => {
    expect(countPositions(degrees.map((degree) => degree * DEGREE))).toBe(count);
  });
});

test.each([3, 4, 5, 8, 12])('for %i even positions the offset is that of the sums', (n) => {
  const angles = spaced(n);
  const readings = angles.map((angle, i) => shape(3, 1, 0, 0)(angle) + (i % 3));
  const { first, gain } = fitHarmonics(readings, angles);
  const sum = (weigh: (angle: number) => number) =>
    (2 / n) * readings.reduce((total, reading, i) => total + reading * weigh(angles[i]!), 0);
  expect(first[0]).toBeCloseTo(sum(Math.cos), 12);
  expect(first[1]).toBeCloseTo(sum(Math.sin), 12);
  expect(gain).toBeCloseTo(Math.sqrt(2 / n), 12);
});

test('offset and oval are found apart whichever positions are read', () => {
  const angle = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
  const size = fc.double({ min: -20, max: 20, noNaN: true });
  fc.assert(
    fc.property(
      size,
      angle,
      size,
      angle,
      fc.subarray(spaced(12), { minLength: 6 }),
      (e, to, q, along, at) => {
        const { first, second, residuals } = fitHarmonics(at.map(shape(e, to, q, along)), at);
        expect(first[0]).toBeCloseTo(e * Math.cos(to), 8);
        expect(first[1]).toBeCloseTo(e * Math.sin(to), 8);
        expect(second[0]).toBeCloseTo(q * Math.cos(2 * along), 8);
        expect(second[1]).toBeCloseTo(q * Math.sin(2 * along), 8);
        for (const residual of residuals) expect(residual).toBeCloseTo(0, 8);
      },
    ),
  );
});

test('turning the clock turns the offset and changes nothing else', () => {
  const angles = [0, 1, 2.5, 3, 4.4, 5.9];
  const readings = [0, 4, 7, 6, -3, -5];
  const plain = fitHarmonics(readings, angles);
  const turned = fitHarmonics(
    readings,
    angles.map((angle) => angle + 0.7),
  );
  expect(Math.hypot(...turned.first)).toBeCloseTo(Math.hypot(...plain.first), 10);
  expect(Math.hypot(...turned.second)).toBeCloseTo(Math.hypot(...plain.second), 10);
  expect(turned.gain).toBeCloseTo(plain.gain, 10);
});

test('three readings lie on a circle and leave no oval', () => {
  const { second, residuals, freedom } = fitHarmonics([1, 9, -4], spaced(3));
  expect(Math.hypot(...second)).toBeCloseTo(0, 12);
  for (const residual of residuals) expect(residual).toBeCloseTo(0, 12);
  expect(freedom).toBe(0);
});

test('four readings on the slant show the oval that lies along them', () => {
  const angles = spaced(4).map((angle) => angle + 45 * DEGREE);
  const { first, second } = fitHarmonics([3, -2, 3, 0], angles);
  expect(Math.hypot(...second)).toBeCloseTo(2, 12);
  expect(Math.atan2(second[1], second[0]) / 2 / DEGREE).toBeCloseTo(45, 9);
  expect(Math.hypot(...first)).toBeCloseTo(1, 12);
});

test('equal readings leave nothing', () => {
  const { mean, first, second } = fitHarmonics([2, 2, 2, 2], spaced(4));
  expect(mean).toBeCloseTo(2, 12);
  expect(Math.hypot(...first, ...second)).toBeCloseTo(0, 12);
});

test('positions crowded on one side make the offset less sure', () => {
  const crowded = [0, 30, 60, 90, 120, 150, 180].map((degree) => degree * DEGREE);
  expect(
    fitHarmonics(
      crowded.map(() => 0),
      crowded,
    ).gain,
  ).toBeGreaterThan(2 * Math.sqrt(2 / 7));
});
