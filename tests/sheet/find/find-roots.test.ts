import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findRoots } from '../../../src/sheet/find/find-roots.ts';

type Curve = (x: number) => number;
const finite = (x: number) => (Number.isFinite(x) ? x : Number.NaN);
/** As the engine works: what is no number has no value. */
const look = (curve: Curve, from: number, to: number, scale = 1) =>
  findRoots((x) => finite(curve(x)), from, to, scale);
const rootsOf = (curve: Curve, from: number, to: number) =>
  look(curve, from, to, Math.max(1, Math.abs(finite(curve(from))) || 0)).roots.map((root) => {
    expect(root.to).toBe(root.from);
    return root.from;
  });

/**
 * Source of functions and ranges: G. Alefeld, F. A. Potra, Y. Shi, "Algorithm 748: enclosing zeros of
 * continuous functions", ACM Transactions on Mathematical Software 21 (1995), pages 327 to 344; of the
 * roots: the table that the tests of the library roots-fortran hold for them.
 */
describe('hard functions of Alefeld, Potra and Shi', () => {
  test.each<[string, Curve, number, number, number]>([
    ['sin x − 1/2', (x) => Math.sin(x) - 0.5, 0, 1.5, Math.PI / 6],
    ['x¹² − 0.2', (x) => x ** 12 - 0.2, 0, 5, 0.8744852722211678],
    ['x¹² − 1', (x) => x ** 12 - 1, 0, 5, 1],
    ['x¹⁴ − 1, nearly flat for most of the way', (x) => x ** 14 - 1, -0.95, 4.05, 1],
    [
      '2 x e⁻²⁰ − 2 e⁻²⁰ˣ + 1',
      (x) => 2 * x * Math.exp(-20) - 2 * Math.exp(-20 * x) + 1,
      0,
      1,
      0.03465735902085385,
    ],
    [
      '2 x e⁻¹⁰⁰ − 2 e⁻¹⁰⁰ˣ + 1',
      (x) => 2 * x * Math.exp(-100) - 2 * Math.exp(-100 * x) + 1,
      0,
      1,
      0.006931471805599453,
    ],
    ['x² − (1 − x)²⁰', (x) => x ** 2 - (1 - x) ** 20, 0, 1, 0.16492095727644096],
    [
      '(1 + (1 − n)⁴) x − (1 − n x)⁴, n = 20, the root close to an end',
      (x) => (1 + 19 ** 4) * x - (1 - 20 * x) ** 4,
      0,
      1,
      7.668595122185337e-6,
    ],
    ['e⁻²⁰ˣ (x − 1) + x²⁰', (x) => (x - 1) * Math.exp(-20 * x) + x ** 20, 0, 1, 0.5527046666784878],
    ['(20 x − 1) / (19 x), a pole beside it', (x) => (20 * x - 1) / (19 * x), 0.01, 1, 0.05],
    ['x^(1/33) − 33^(1/33)', (x) => x ** (1 / 33) - 33 ** (1 / 33), 1, 100, 33],
    [
      'n/20 (x/1.5 + sin x − 1), −n/20 below 0, n = 40',
      (x) => (x >= 0 ? (x / 1.5 + Math.sin(x) - 1) * 2 : -2),
      -10_000,
      Math.PI / 2,
      0.6238065189616123,
    ],
    [
      'an exponential between two level stretches, n = 20',
      (x) => steps(20, x),
      -10_000,
      1e-4,
      5.905130559421971e-5,
    ],
  ])('%s', (_, curve, from, to, root) => {
    const found = rootsOf(curve, from, to);
    expect(found).toHaveLength(1);
    expect(Math.abs(found[0]! - root)).toBeLessThan(1e-12 * root);
  });

  function steps(n: number, x: number): number {
    if (x >= 2e-3 / (n + 1)) return Math.E - 1.859;
    return x >= 0 ? Math.exp(500 * (n + 1) * x) - 1.859 : -0.859;
  }
});

describe('other functions that are known to be hard', () => {
  test('x³ − 2 x − 5, Wallis’s example of 1685, to the last figure of a double', () => {
    // Source: the same table.
    expect(rootsOf((x) => x ** 3 - 2 * x - 5, 2, 3)).toEqual([
      expect.closeTo(2.0945514815423265, 14),
    ]);
  });

  test('3 x² + ln((π − x)²)/π⁴ + 1 dips below 0 for 10⁻⁶⁶⁷ about π only: no root is made up', () => {
    // Source: W. H. Press and others, Numerical Recipes, section 9.0 (from memory).
    const { roots } = look(
      (x) => 3 * x * x + Math.log((Math.PI - x) ** 2) / Math.PI ** 4 + 1,
      2,
      4,
    );
    expect(roots).toEqual([]);
  });

  test('Wilkinson’s polynomial has all its roots, from 1 to 20', () => {
    // Source: J. H. Wilkinson, Numerische Mathematik 1 (1959); the product is its definition.
    const product = (x: number) =>
      Array.from({ length: 20 }, (_, i) => x - i - 1).reduce((a, b) => a * b, 1);
    const found = rootsOf(product, 0.5, 20.6);
    expect(found).toHaveLength(20);
    for (const [i, root] of found.entries()) expect(root).toBeCloseTo(i + 1, 9);
  });

  test('cos 50 x crosses again and again, and each time is told', () => {
    const found = rootsOf((x) => Math.cos(50 * x), 0, 3);
    expect(found).toHaveLength(48);
    for (const [i, root] of found.entries())
      expect(root).toBeCloseTo(((i + 0.5) * Math.PI) / 50, 12);
  });

  test('of x⁹ nothing is known nearer than it counts as zero: the stretch is told, 0 inside it', () => {
    const [root, ...others] = look((x) => x ** 9, -1, 4, 1).roots;
    expect(others).toEqual([]);
    expect(root!.from).toBeLessThanOrEqual(0);
    expect(root!.to).toBeGreaterThanOrEqual(0);
    expect(Math.max(-root!.from, root!.to) ** 9).toBeLessThanOrEqual(1e-12);
  });
});

describe('two roots of a clutch lining', () => {
  test('a wide and a narrow lining carry the same torque', () => {
    // With the outer diameter 1 the torque goes as x (1 − x²). Half the way down: x³ − x + 3/8 = 0,
    // which is (x − 1/2)(x² + x/2 − 3/4). Derived.
    const found = rootsOf((x) => x * (1 - x * x) - 3 / 8, 0.01, 0.99);
    expect(found).toEqual([expect.closeTo(0.5, 12), expect.closeTo((Math.sqrt(13) - 1) / 4, 12)]);
  });

  test('at the highest torque the two meet in one, at 1/√3 of the outer diameter', () => {
    const highest = 2 / (3 * Math.sqrt(3));
    const found = look((x) => x * (1 - x * x) - highest, 0.01, 0.99, highest).roots;
    expect(found.length).toBe(1);
    expect((found[0]!.from + found[0]!.to) / 2).toBeCloseTo(1 / Math.sqrt(3), 5);
  });

  test('above it there is none, and that place comes closest', () => {
    const { roots, closest } = look((x) => x * (1 - x * x) - 0.4, 0.01, 0.99);
    expect(roots).toEqual([]);
    expect(closest!.x).toBeCloseTo(1 / Math.sqrt(3), 6);
  });
});

describe('what is no root', () => {
  test.each<[string, Curve]>([
    ['a jump over zero', (x) => (x < 0.3 ? -1 : 1)],
    ['a pole', (x) => 1 / (x - 0.3)],
    ['a pole that is hit', (x) => 1 / (x - 0.5)],
    ['a line that ends before it', (x) => (x < 0.3 ? x - 0.4 : Number.NaN)],
    ['a curve that stays above', (x) => x * x + 1e-6],
    ['a level line', () => 1],
    ['nothing at all', () => Number.NaN],
  ])('%s', (_, curve) => {
    expect(look(curve, 0, 1).roots).toEqual([]);
  });
});

describe('what is a root all the same', () => {
  test.each<[string, Curve, readonly number[]]>([
    ['at the lower end', (x) => x, [0]],
    ['at the upper end', (x) => 1 - x, [1]],
    ['at both ends', (x) => x * (1 - x), [0, 1]],
    ['where the line begins', (x) => (x < 0.3 ? Number.NaN : Math.sqrt(x - 0.3)), [0.3]],
    ['touched from above', (x) => (x - 1 / 3) ** 2, [1 / 3]],
    ['touched from below', (x) => -((x - 1 / 3) ** 2), [1 / 3]],
    ['two, nearer than a step', (x) => (x - 0.3331) * (x - 0.3337), [0.3331, 0.3337]],
    ['at a corner', (x) => Math.abs(x - 1 / 3), [1 / 3]],
  ])('%s', (_, curve, places) => {
    const { roots } = look(curve, 0, 1);
    expect(roots.map(({ from, to }) => (from + to) / 2)).toEqual(
      places.map((place) => expect.closeTo(place, 5)),
    );
  });

  test('a stretch at zero is one root with two ends', () => {
    const { roots, varies } = look((x) => Math.max(0, x - 0.5) - Math.max(0, 0.25 - x), 0, 1);
    expect(roots).toHaveLength(1);
    expect(roots[0]!.from).toBeCloseTo(0.25, 2);
    expect(roots[0]!.to).toBeCloseTo(0.5, 2);
    expect(varies).toBe(true);
  });
});

test('a function that is the same everywhere does not vary, at zero included', () => {
  expect(look(() => 3, 0, 1)).toMatchObject({ varies: false, roots: [] });
  expect(look(() => 0, 0, 1)).toEqual({
    roots: [{ from: 0, to: 1 }],
    closest: { x: 0, y: 0 },
    varies: false,
  });
});

test('a range of no width is one place', () => {
  expect(look((x) => x - 2, 2, 2).roots).toEqual([{ from: 2, to: 2 }]);
  expect(look((x) => x - 3, 2, 2)).toMatchObject({ roots: [], closest: { x: 2, y: -1 } });
});

test('without a value anywhere nothing is closest', () => {
  expect(look(() => Number.NaN, 0, 1)).toEqual({ roots: [], closest: undefined, varies: false });
});

test('a sign that changes beside a sample that hits zero is found', () => {
  // 0.5 is one of the even steps; the curve touches there and crosses close by.
  const found = rootsOf((x) => (x - 0.5) * (x - 0.501) * (x - 0.2), 0, 1);
  expect(found).toEqual([0.2, 0.5, 0.501].map((place) => expect.closeTo(place, 9)));
});

test('all roots of any product are found, wherever they stand apart', () => {
  const places = fc
    .uniqueArray(fc.integer({ min: 1, max: 99 }), { minLength: 1, maxLength: 6 })
    .map((found) => found.map((n) => n / 100 + 0.0013).toSorted((a, b) => a - b));
  fc.assert(
    fc.property(places, (roots) => {
      const found = rootsOf(
        (x) => roots.reduce((product, root) => product * (x - root), 1),
        0,
        1.1,
      );
      expect(found).toEqual(roots.map((root) => expect.closeTo(root, 9)));
    }),
    { numRuns: 60 },
  );
});

test('what is told as closest is no further off than any place that one tries', () => {
  const curve = fc.constantFrom<Curve>(
    (x) => Math.sin(20 * x) + 1.3,
    (x) => (x < 0.4 ? 2 - x : x + 0.1),
    (x) => 1 / (x + 0.1),
    (x) => (x < 0.2 ? Number.NaN : Math.sqrt(x - 0.2) + 0.5),
  );
  fc.assert(
    fc.property(curve, fc.double({ min: 0, max: 1, noNaN: true }), (work, x) => {
      const { closest } = look(work, 0, 1);
      const tried = work(x);
      if (!Number.isNaN(tried)) expect(Math.abs(closest!.y)).toBeLessThan(Math.abs(tried) + 1e-6);
    }),
  );
});
