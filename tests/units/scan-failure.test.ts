import { expect, test } from 'vitest';
import { isFailure } from '../../src/units/scan-failure.ts';
import { scanQuantity } from '../../src/units/scan-quantity.ts';

test('a failure is told from a quantity and from nothing', () => {
  expect(isFailure(scanQuantity('1.2.3', 0, 'sheet'))).toBe(true);
  expect(isFailure(scanQuantity('1.2', 0, 'sheet'))).toBe(false);
  expect(isFailure(scanQuantity('x', 0, 'sheet'))).toBe(false);
});
