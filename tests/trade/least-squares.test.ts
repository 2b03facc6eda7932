import { expect, test } from 'vitest';
import { fitLinear } from '../../src/trade/least-squares.ts';

test('a straight line through points on it is found exactly', () => {
  const { coefficients, residuals } = fitLinear(
    [
      [1, 1, 1, 1],
      [0, 1, 2, 5],
    ],
    [3, 5, 7, 13],
  );
  expect(coefficients[0]).toBeCloseTo(3, 12);
  expect(coefficients[1]).toBeCloseTo(2, 12);
  for (const residual of residuals) expect(residual).toBeCloseTo(0, 12);
});

test('the mean of three readings leaves residuals that add up to nothing', () => {
  const { coefficients, residuals, inverse } = fitLinear([[1, 1, 1]], [1, 2, 6]);
  expect(coefficients).toEqual([3]);
  expect(residuals).toEqual([-2, -1, 3]);
  expect(inverse[0]![0]).toBeCloseTo(1 / 3, 15);
});

test('a pivot of nought is walked round', () => {
  const { coefficients } = fitLinear(
    [
      [0, 1],
      [1, 0],
    ],
    [4, 9],
  );
  expect(coefficients).toEqual([9, 4]);
});

test('columns that say the same give no number', () => {
  const { coefficients } = fitLinear(
    [
      [1, 1],
      [1, 1],
    ],
    [1, 2],
  );
  for (const coefficient of coefficients) expect(coefficient).toBeNaN();
});

test('no readings and no columns give nothing', () => {
  expect(fitLinear([], [])).toEqual({ coefficients: [], residuals: [], inverse: [] });
});
