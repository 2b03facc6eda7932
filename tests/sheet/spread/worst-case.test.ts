import { expect, test } from 'vitest';
import { worstCase } from '../../../src/sheet/spread/worst-case.ts';

const box = (...halves: readonly number[]) =>
  halves.map((half) => ({ value: 0, low: -half, high: half }));

test('a sum of limits reaches the sum of their sizes at the corners', () => {
  const found = worstCase(([a, b, c]) => a! - b! + c!, box(0.05, 0.15, 0.1));
  expect(found.method).toBe('corners');
  expect(found.from).toBeCloseTo(-0.3, 12);
  expect(found.to).toBeCloseTo(0.3, 12);
});

test('what appears twice cancels, and its rounding is no turning', () => {
  const found = worstCase(([a, s]) => 3 + a! - s! + (0.25 + s!) - 0.25, box(0.003, 0.001));
  expect(found.method).toBe('corners');
  expect(found.to - found.from).toBeCloseTo(0.006, 12);
});

test('a corner with mixed signs is found although each given alone pulls the other way', () => {
  const found = worstCase(
    ([a, b]) => a! * b!,
    [
      { value: 1, low: -1, high: 3 },
      { value: 1, low: -2, high: 4 },
    ],
  );
  expect(found.from).toBeCloseTo(-6, 12);
  expect(found.to).toBeCloseTo(12, 12);
});

test('a result that turns inside the limits is searched for, and says so', () => {
  const found = worstCase(([x]) => 1 - (x! - 0.3) ** 2, box(1));
  expect(found.method).toBe('search');
  expect(found.to).toBeCloseTo(1, 6);
  expect(found.from).toBeCloseTo(1 - 1.3 ** 2, 12);
});

test('a turn in two givens at once is found', () => {
  const found = worstCase(([x, y]) => -((x! - 0.2) ** 2) - (y! + 0.4) ** 2, box(1, 1));
  expect(found.to).toBeGreaterThan(-1e-4);
});

test('more than eight givens take the corner to which each pulls', () => {
  const found = worstCase(
    (xs) => xs.reduce((sum, x, i) => sum + (i % 2 ? x : -x), 0),
    box(...Array.from({ length: 12 }, () => 1)),
  );
  expect(found).toEqual({ from: -12, to: 12, method: 'corners' });
});

test('places without a value are passed over', () => {
  const found = worstCase(([x]) => Math.sqrt(x!), [{ value: 0.5, low: -1, high: 4 }]);
  expect(found.to).toBe(2);
  expect(found.from).toBeGreaterThanOrEqual(0);
});

test('limits of no width leave the value alone', () => {
  expect(worstCase(([x]) => 2 + x!, box(0))).toEqual({ from: 2, to: 2, method: 'corners' });
});

test('a gap is told of, and only where there is one', () => {
  const root = ([x]: readonly number[]) => Math.sqrt(x!);
  expect(worstCase(root, [{ value: 0.5, low: -1, high: 4 }]).gap).toBe(true);
  expect(worstCase(root, [{ value: 0.5, low: 0, high: 4 }])).not.toHaveProperty('gap');
});
