import fc from 'fast-check';
import { expect, test } from 'vitest';
import { describeSamples } from '../../../src/sheet/spread/distribution.ts';
import { runSimulation } from '../../../src/sheet/spread/simulate.ts';
import { spreadOf } from '../../../src/sheet/spread/spread.ts';
import { cellIndex, openText, work } from '../../support/notebooks.ts';

const sheet = (given: string, formulas: string) =>
  `\`\`\`given\n${given}\n\`\`\`\n\n\`\`\`work\n${formulas}\n\`\`\`\n`;

function spread(given: string, formulas: string, name = 'y') {
  const worked = work(openText(sheet(given, formulas)), 'made');
  return spreadOf(worked.book, worked.frame, cellIndex(worked.book, 'made', name));
}

test('a result without a doubted given has no spread', () => {
  expect(spread('p = 3 in', 'y = 2 * p')).toEqual([]);
});

test('a result that the doubted reading does not reach has no spread', () => {
  expect(spread('p = 3 ± 0.3\nlimit = 2', 'y = min(p, limit)')).toEqual([]);
});

test('terms that cancel but for rounding leave no spread', () => {
  const given = 'p = 0.1 ± 0.03\nq = 0.25';
  expect(spread(given, 'long = p + q\ny = (long + 0.105) - long')).toEqual([]);
});

test('limits of ± t have a standard uncertainty of t / √3', () => {
  const [found] = spread('p = 3 ± 0.3', 'y = 2 * p');
  expect(found!.likely.u).toBeCloseTo(0.6 / Math.sqrt(3), 12);
  expect(found!.worst).toEqual({ from: 5.4, to: 6.6, method: 'corners' });
});

test('one tolerance alone is never likely to be exceeded', () => {
  const [found] = spread('p = 3 ± 0.3', 'y = 2 * p');
  expect(found!.likely).toMatchObject({ from: found!.worst.from, to: found!.worst.to });
  const [many] = spread('p = 3 ± 0.3\nq = 3 ± 0.3\nr = 3 ± 0.3', 'y = p + q + r');
  expect(many!.likely.to).toBeLessThan(many!.worst.to);
});

test('repeated readings that cancel do not widen what a tolerance allows', () => {
  const given = 'p = 3.4; 3.5; 3.6\nq = 0.25 ± 0.01';
  const [found] = spread(given, 'y = (p + q) - p');
  expect(found!.likely).toMatchObject({ from: found!.worst.from, to: found!.worst.to });
});

test('repeated readings have the standard error of their mean and one degree of freedom less', () => {
  const [found] = spread('p = 3.412; 3.405; 3.418; 3.409; 3.411', 'y = p');
  expect(found!.likely.u).toBeCloseTo(0.002121, 6);
  expect(found!.likely.dof).toBeCloseTo(4, 9);
  expect((found!.likely.to - found!.likely.from) / 2).toBeCloseTo(0.00589, 5);
});

test('unequal limits move the middle of the likely range', () => {
  const [found] = spread('p = 3 +0.3/-0.1', 'y = p');
  expect((found!.likely.from + found!.likely.to) / 2).toBeCloseTo(3.1, 12);
  expect(found!.worst.from).toBeCloseTo(2.9, 12);
  expect(found!.worst.to).toBeCloseTo(3.3, 12);
});

test('a straightedge used on both sides cancels, on one side only it does not', () => {
  const given = 'finger = 3.2 ± 0.003\nbearing = 3.0 ± 0.003\nedge = 0.25 ± 0.001';
  const [both] = spread(given, 'y = (finger - edge) - (bearing - edge)');
  const [one] = spread(given, 'y = finger - edge - bearing');
  expect(both!.worst.to - both!.worst.from).toBeCloseTo(0.012, 12);
  expect(one!.worst.to - one!.worst.from).toBeCloseTo(0.014, 12);
  expect(both!.shares.find(({ share }) => share === 0 || share < 1e-12)).toBeDefined();
});

test('shares add up to one, the largest first', () => {
  const [found] = spread('p = 3 ± 0.3\nq = 5 ± 0.1', 'y = p + q');
  expect(found!.shares.map(({ share }) => Math.round(100 * share))).toEqual([90, 10]);
});

test('each element of a list has its own spread', () => {
  const found = spread('p = 3 ± 0.3', 'y = [1, 2, 4] * p');
  expect(found.map(({ likely }) => likely.u / found[0]!.likely.u)).toEqual(
    [1, 2, 4].map((n) => expect.closeTo(n, 9)),
  );
});

test('a result that jumps is not called straight', () => {
  const [found] = spread('p = 3 ± 0.3', 'y = if p > 3.1 then 10 else 0');
  expect(found!.straight).toBe(false);
});

test('a given at the edge of its domain keeps the side that has a value', () => {
  const [found] = spread('p = 0.001 ± 0.01', 'y = sqrt(p)');
  expect(Number.isFinite(found!.likely.u)).toBe(true);
  expect(found!.straight).toBe(false);
});

test('no value, no spread', () => {
  expect(spread('p = 0 ± 0.01', 'y = 1 / p')).toEqual([]);
});

test('for small tolerances simulation and law of propagation agree on any smooth formula', () => {
  const formulas = [
    'p * q',
    'p / q',
    'p ^ 2 - q',
    'sqrt(p) + q',
    'p * exp(q / 10)',
    'sin(p * 1 rad) + 2 * q',
  ];
  fc.assert(
    fc.property(
      fc.constantFrom(...formulas),
      fc.double({ min: 1, max: 2, noNaN: true }),
      fc.double({ min: 1, max: 2, noNaN: true }),
      (formula, p, q) => {
        const worked = work(
          openText(sheet(`p = ${p} ± 0.001\nq = ${q} ± 0.002`, `y = ${formula}`)),
          'made',
        );
        const index = cellIndex(worked.book, 'made', 'y');
        const [linear] = spreadOf(worked.book, worked.frame, index);
        const { u, mean } = describeSamples(
          runSimulation(worked.book, worked.frame, index, { samples: 20_000, seed: 0.25 }),
        );
        expect(u / linear!.likely.u).toBeCloseTo(1, 1);
        expect(Math.abs(mean - linear!.value)).toBeLessThan(0.05 * linear!.likely.u);
      },
    ),
    { numRuns: 25 },
  );
});

test('a result at its turning point is in doubt, though its slope there is nothing', () => {
  const [found] = spread('p = 0 ± 0.3', 'y = p * p');
  expect(found).toMatchObject({ straight: false, worst: { from: 0, method: 'search' } });
  expect(found!.likely.u).toBe(0);
});

test('a result that has a value at its reading only is in doubt, and says that it has a gap', () => {
  const [found] = spread('p = 0 ± 0.3', 'y = sqrt(-p * p)');
  expect(found).toMatchObject({ straight: false, worst: { gap: true } });
});

test('a tolerance of 0 is no doubt', () => {
  expect(spread('p = 3 ± 0', 'y = 2 * p')).toEqual([]);
});

test('a tolerance larger than its reading goes through nothing and beyond', () => {
  const [found] = spread('p = 1 ± 3', 'y = 2 * p');
  expect(found!.worst).toEqual({ from: -4, to: 8, method: 'corners' });
});

/** Smooth formulas of p and q, both between 1 and 2; what they are worked from stays above 0. */
const { smooth } = fc.letrec<{ smooth: string }>((tie) => ({
  smooth: fc.oneof(
    { maxDepth: 3, depthSize: 'small', withCrossShrink: true },
    fc.constantFrom('p', 'q', '(p + q)', '(3 * p - q)', '(2 + 1 / q)'),
    fc.tuple(tie('smooth'), tie('smooth')).map(([a, b]) => `(${a} + ${b})`),
    fc.tuple(tie('smooth'), tie('smooth')).map(([a, b]) => `(${a} * ${b})`),
    fc.tuple(tie('smooth'), tie('smooth')).map(([a, b]) => `(${a} / ${b})`),
    tie('smooth').map((a) => `sqrt(${a})`),
    tie('smooth').map((a) => `ln(1 + ${a})`),
  ),
}));

test('so they do on formulas that nobody thought of, for limits and for repeated readings', () => {
  const given = [
    'p = 1.5 ± 0.0005',
    'q = 1.1995; 1.2005; 1.2; 1.1998; 1.2002; 1.2; 1.2001; 1.1999',
  ];
  fc.assert(
    fc.property(smooth, (formula) => {
      const worked = work(openText(sheet(given.join('\n'), `y = ${formula}`)), 'made');
      const index = cellIndex(worked.book, 'made', 'y');
      const readings = cellIndex(worked.book, 'made', 'q');
      const [linear] = spreadOf(worked.book, worked.frame, index);
      // Where p and q cancel nothing is left to compare.
      if (linear === undefined || linear.likely.u < 1e-9 * Math.abs(linear.value)) return;
      const samples = runSimulation(worked.book, worked.frame, index, {
        samples: 20_000,
        seed: 0.5,
      });
      const { mean, u } = describeSamples(samples);
      // Student's t of 7 degrees of freedom is wider than the normal by 7/5 in its variance (JCGM 101, 6.4.9).
      const variance = linear.shares.reduce(
        (sum, { cell, effect }) => sum + effect ** 2 * (cell === readings ? 7 / 5 : 1),
        0,
      );
      const off = (mean - linear.value) / linear.likely.u;
      expect({ formula, off, u: u / Math.sqrt(variance) }).toEqual({
        formula,
        off: expect.closeTo(0, 1),
        u: expect.closeTo(1, 1),
      });
    }),
    { numRuns: 40 },
  );
});
