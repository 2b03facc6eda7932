import fc from 'fast-check';
import { expect, test } from 'vitest';
import { convertResolution } from '../../src/units/convert-resolution.ts';
import { unitIn } from '../../src/units/counterpart.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';
import { UNITS } from '../../src/units/unit-table.ts';

test.each([
  [0.001, 'in', 'mm', 0.01],
  [0.0005, 'in', 'mm', 0.01],
  [0.005, 'in', 'mm', 0.1],
  [0.01, 'mm', 'in', 0.0001],
  [1, 'mph', 'km/h', 1],
  [10, 'mph', 'km/h', 1],
  [1, 'in', 'mm', 1],
  [1, 'psi', 'bar', 0.05],
  [1, 'm', 'mm', 1],
  [0.005, 'm', 'mm', 1],
  [0.05, 'rev', 'rev', 0.05],
  [0.3, 'in', 'in', 0.3],
])('a step of %d %s is one of %d in %s', (step, from, to, wanted) => {
  expect(convertResolution(step, parseUnit(from)!, parseUnit(to)!)).toBe(wanted);
});

test('the new step is never coarser than the old one or 1, nor finer than a fifth of the two', () => {
  const units = fc.constantFrom(...UNITS.filter((unit) => unit.system !== 'common'));
  fc.assert(
    fc.property(units, fc.integer({ min: -6, max: 3 }), (from, power) => {
      const to = unitIn(from, from.system === 'metric' ? 'inch-pound' : 'metric');
      const step = 10 ** power;
      fc.pre(from.factor !== to.factor);
      const most = Math.min(1, (step * from.factor) / to.factor);
      const share = convertResolution(step, from, to) / most;
      expect(share).toBeLessThanOrEqual(1 + 1e-8);
      expect(share).toBeGreaterThan(0.2 - 1e-8);
    }),
  );
});
